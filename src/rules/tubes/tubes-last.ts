import { commonPractice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Welds of the tubes themselves, and of what sits on the shell. */
const own = ["tube-to-tube-plate", "attachment"];

export const tubesLast = rule({
  id: "tubes-last",
  scope: "tube-nests",
  title: "Tubes are expanded after their plate is welded in",
  basis: commonPractice("welding beside expanded tubes loosens them"),
  kind: "tube-end-group",
  when: [{ path: "field.record.<joint:parts[]>", exists: true }],
  severity: "query",
  owner: "shop",
  inputs: {
    made: date("date"),
    plate: thing("field.record", {
      joints: anyOf(
        things("<joint:parts[]>", {
          type: text("type"),
          runs: anyOf(things("<weld-log:joint>.runs[]", { day: date("date") })),
        }),
      ),
    }),
  },
  *check({ made, plate }, group) {
    const late = plate.joints.filter(
      ({ type, runs }) => !own.includes(type) && runs.some(({ day }) => canPrecede(day, made) === "no"),
    );
    const [first] = late;
    if (first === undefined) return;
    yield {
      at: "made",
      on: plate,
      accuses: ["made"],
      message: `the tube ends of group ${group.name} were made on ${made.text}; joint ${late.map(({ $ }) => $.name).join(", ")} of their plate ${late.length === 1 ? "was" : "were"} welded after that`,
      why: "the heat of a weld loosens tubes that were expanded before it",
      hint: "compare the days with both logs; if it was so, answer this query with when the tubes were expanded again",
      related: [{ at: first, message: "welded later" }],
    };
  },
  examples: [
    { name: "afterwards", given: expanded("2026-04-15"), objections: [] },
    {
      name: "before",
      given: expanded("2026-03-11"),
      objections: [
        "the tube ends of group X-01 were made on 2026-03-11; joint K3 of their plate was welded after that",
      ],
    },
  ],
});

function expanded(made: string) {
  const runs = [{ day: "2026-03-13T07:40+01:00" }];
  return {
    made,
    plate: {
      joints: [
        { $: "K3", type: "corner", runs },
        { $: "T1", type: "tube-to-tube-plate", runs: [{ day: "2026-05-01" }] },
      ],
    },
  };
}

import { commonPractice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, optional, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const runs = anyOf(things("<weld-log:joint>.runs[]", { day: date("date"), finished: optional(date("finished")) }));

export const seamOrder = rule({
  id: "seam-order",
  title: "A seam round a shell, or a plate set into it, is welded after the seams that close its courses",
  basis: commonPractice("a course is closed before it is joined to the next: its ends are round only then"),
  kind: "joint",
  when: [{ path: "type", equals: ["butt", "corner"] }],
  severity: "query",
  owner: "welding coordination",
  inputs: {
    role: text("role"),
    runs,
    parts: list(thing("parts[]", { seams: anyOf(things('<joint:parts[]>[role="longitudinal"]', { runs })) })),
  },
  *check({ role, runs: own, parts }, joint) {
    if (role === "longitudinal") return;
    const begun = own.toSorted((one, other) => one.day.from - other.day.from)[0];
    if (begun === undefined) return;
    for (const part of parts)
      for (const seam of part.seams) {
        const late = seam.runs.find(({ day, finished }) => canPrecede(finished ?? day, begun.day) === "no");
        if (late === undefined) continue;
        const [day, end] = [begun.day, late.finished ?? late.day];
        yield {
          at: [begun, "day"],
          on: begun,
          accuses: [],
          message: `joint ${joint.name} was welded on ${day.text}, before joint ${seam.$.name}, which closes its part ${part.$.name}, on ${end.text}`,
          why: "both days stand in the weld logs",
          hint: "compare the logs and correct the wrong day, or answer this query with how it was done",
          related: [{ at: late, message: `welded on ${end.text}` }],
        };
        return;
      }
  },
  examples: [
    { name: "after it", given: welded("2026-05-28", "2026-05-27"), objections: [] },
    { name: "on the same day", given: welded("2026-05-27", "2026-05-27"), objections: [] },
    {
      name: "a part without a seam",
      given: { ...welded("2026-05-28", "2026-05-27"), parts: [{ seams: [] }] },
      objections: [],
    },
    {
      name: "a seam that itself closes a course",
      given: { ...welded("2026-05-26", "2026-05-27"), role: "longitudinal" },
      objections: [],
    },
    {
      name: "before it",
      given: welded("2026-05-26", "2026-05-27"),
      objections: ["joint X-01 was welded on 2026-05-26, before joint L1, which closes its part P01, on 2026-05-27"],
    },
  ],
});

function welded(round: string, along: string) {
  return {
    role: "circumferential",
    runs: [{ day: round }],
    parts: [{ $: "P01", seams: [{ $: "L1", runs: [{ day: along }] }] }],
  };
}

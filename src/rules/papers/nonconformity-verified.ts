import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { nonconformityCourse as basis } from "../shared/nonconformities.ts";

export const verifiedByTest = rule({
  ...basis,
  id: "nonconformity-verified",
  title: "A test that verifies a correction is of a joint that was affected, and made after it was raised",
  kind: "ndt-report",
  when: [{ path: '<nonconformity-report:verification[]>[state="closed"].affected', exists: true }],
  severity: "nonconformity",
  inputs: {
    day: date("date"),
    joints: anyOf(list(thing("rows[].joint", {}))),
    reports: anyOf(
      things('<nonconformity-report:verification[]>[state="closed"]', {
        raised: date("raised"),
        affected: list(text("affected[]")),
      }),
    ),
  },
  *check({ day, joints, reports }, test) {
    for (const report of reports) {
      const affected = report.affected.flatMap((one) => (one.startsWith("joint:") ? [one.slice("joint:".length)] : []));
      const fault =
        canPrecede(report.raised, day) === "no"
          ? `is of ${day.text}, before the report was raised on ${report.raised.text}`
          : affected.length > 0 && joints.length > 0 && !joints.some(({ $ }) => affected.includes($.id))
            ? `tested ${[...new Set(joints.map(({ $ }) => $.name))].join(", ")}, and not ${affected.join(" or ")}`
            : undefined;
      if (fault !== undefined)
        yield {
          at: report,
          on: report,
          name: test.id,
          message: `nonconformity report ${report.$.name} names ${test.name} as what verified its correction, which ${fault}`,
          why: "a correction is verified on what was corrected, when that is done",
          hint: "name the report of the test after the correction",
          related: [{ at: "day", message: day.text }],
        };
    }
  },
  examples: [
    { name: "the repaired joint, afterwards", given: verified({}), objections: [] },
    {
      name: "before it was raised",
      given: verified({ day: "2026-06-10" }),
      objections: [
        "nonconformity report NCR-01 names X-01 as what verified its correction, which is of 2026-06-10, before the report was raised on 2026-06-11",
      ],
    },
    {
      name: "another joint",
      given: verified({ joints: [{ $: "L1" }] }),
      objections: [
        "nonconformity report NCR-01 names X-01 as what verified its correction, which tested L1, and not C2",
      ],
    },
  ],
});

function verified(changes: Readonly<Record<string, unknown>>) {
  return {
    day: "2026-06-15",
    joints: [{ $: "C2" }],
    reports: [{ $: "NCR-01", raised: "2026-06-11", affected: ["joint:C2", "ndt-report:RT-03"] }],
    ...changes,
  };
}

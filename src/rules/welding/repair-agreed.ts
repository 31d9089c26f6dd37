import { commonPractice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, optional, text, thing, things } from "../../model/input.ts";
import { weldedRepair } from "../../requirements/testing-conditions.ts";
import { rule } from "../../model/rule.ts";

export const repairAfterAgreement = rule({
  id: "repair-after-agreement",
  title: "A repair is welded after those agreed to it who are named in its nonconformity report",
  basis: commonPractice("what is done with a rejected weld is decided before it is done"),
  kind: "repair",
  when: [weldedRepair, { path: "nonconformity.approvals[].date", exists: true }],
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    welded: date("date"),
    report: optional(
      thing("nonconformity", {
        approvals: anyOf(things("approvals[]", { role: text("role"), day: optional(date("date")) })),
      }),
    ),
  },
  *check({ welded, report }, repair) {
    const late = (report?.approvals ?? []).flatMap((one) =>
      one.day !== undefined && canPrecede(one.day, welded) === "no" ? [{ ...one, day: one.day }] : [],
    );
    const [first] = late;
    if (report === undefined || first === undefined) return;
    yield {
      at: "welded",
      accuses: [],
      message: `repair ${repair.name} was welded on ${welded.text}; ${report.$.name} was agreed to by ${late.map(({ role, day }) => `${role} on ${day.text}`).join(", ")}`,
      why: "it was repaired before it was decided how",
      hint: "compare the days with the report and the repair sheet; if they are right, have it recorded as a nonconformity of its own",
      related: late.map((one) => ({ at: one, message: one.day.text })),
    };
  },
  examples: [
    { name: "on the day", given: agreed("2026-06-12"), objections: [] },
    {
      name: "days later",
      given: agreed("2026-06-16"),
      objections: [
        "repair X-01 was welded on 2026-06-12T13:20+02:00; NCR-01 was agreed to by inspection body on 2026-06-16",
      ],
    },
  ],
});

function agreed(day: string) {
  return {
    welded: "2026-06-12T13:20+02:00",
    report: { $: "NCR-01", approvals: [{ role: "inspection body", day }, { role: "client" }] },
  };
}

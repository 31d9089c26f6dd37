import { anyOf, date, list, optional, text, thing } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { basis, hint, holds, person, roleFault, said } from "../shared/roles.ts";
import { aKind } from "../shared/words.ts";

/** Kinds whose records are signed, and lists of theirs that are signed in the same way. */
const signed: readonly string[] = [
  "alloy-report",
  "answered-query",
  "body-certificate",
  "book",
  "calculation-sheet",
  "coating-report",
  "consumable-batch",
  "declaration",
  "deviation",
  "dimension-check",
  "document",
  "drawing",
  "equipment",
  "fitting",
  "hardness-report",
  "heat-treatment",
  "inspection-step",
  "instrument",
  "issue",
  "joint",
  "leak-test",
  "material-certificate",
  "mill-approval",
  "nameplate",
  "ndt-personnel",
  "ndt-report",
  "nonconformity-report",
  "order-exception",
  "organisation",
  "original",
  "part",
  "person",
  "piece-mark",
  "pressure-test",
  "procedure",
  "procedure-qualification",
  "production-test",
  "reference-table",
  "repair",
  "safety-valve",
  "tube-end-group",
  "waiver",
  "weld-log",
  "welder-qualification",
  "welding-procedure",
];

const lists: readonly (readonly [kind: string, list: string])[] = [
  ...signed.map((kind) => [kind, "signatures"] as const),
  ["deviation", "agreement"],
  ["waiver", "agreement"],
  ["nonconformity-report", "approvals"],
];

/** Each signature is of a person who held that role on that day. */
export const signaturesAuthorised: readonly Rule[] = lists.map(([kind, name]) =>
  rule({
    id: `${kind}-${name}`,
    title: `Who signs ${name === "signatures" ? "" : `the ${name} of `}${aKind(kind)} holds that role on that day`,
    basis,
    kind,
    // Where nobody signed there is nobody to judge.
    when: [{ path: name, exists: true }],
    severity: "nonconformity",
    fault: roleFault,
    owner: "quality",
    inputs: {
      signatures: anyOf(
        list(
          thing(`${name}[]`, {
            role: text("role"),
            day: optional(date("date")),
            named: optional(text("person")),
            person: thing("person", person),
          }),
        ),
      ),
    },
    *check({ signatures }, subject) {
      // Who signs several rows in one role (calibrations of one instrument) lacks it once.
      const seen = new Set<string>();
      for (const signature of signatures) {
        const { role, day, person: who } = signature;
        const key = `${who.$.id} ${role}`;
        if (holds(who, [role], day) || seen.has(key)) continue;
        seen.add(key);
        yield {
          at: [signature, "named"],
          on: who,
          name: role,
          message: `${who.$.id} signed ${subject.name} as ${role}${day === undefined ? "" : ` on ${day.text}`} without that role`,
          why: said(who),
          hint,
          related: [{ at: who, message: "registered here" }],
        };
      }
    },
    examples: [
      { name: "on the first day of the role", given: { signatures: [signature("2026-01-01")] }, objections: [] },
      { name: "on the last day of the role", given: { signatures: [signature("2026-12-31")] }, objections: [] },
      {
        name: "the day before",
        given: { signatures: [signature("2025-12-31")] },
        objections: ["P05 signed X-01 as quality control on 2025-12-31 without that role"],
      },
      {
        name: "the day after",
        given: { signatures: [signature("2027-01-01")] },
        objections: ["P05 signed X-01 as quality control on 2027-01-01 without that role"],
      },
      {
        name: "another role",
        given: { signatures: [{ ...signature("2026-06-01"), role: "client" }] },
        objections: ["P05 signed X-01 as client on 2026-06-01 without that role"],
      },
    ],
  }),
);

function signature(day: string) {
  return {
    role: "quality control",
    day,
    person: { $: "P05", roles: [{ role: "quality control", from: "2026-01-01", to: "2026-12-31" }] },
  };
}

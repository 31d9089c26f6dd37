import { ownChoice } from "../../model/basis.ts";
import { anyOf, list, text, thing, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { weldedRepair } from "../../requirements/testing-conditions.ts";
import { aKind, kindName } from "../shared/words.ts";

const roles = ["welder", "welding operator"];

const papers = [
  { kind: "weld-log", who: "runs[].welders[]", welded: [] },
  { kind: "repair", who: "welders[]", welded: [weldedRepair] },
] as const;

/** Who signs as the welder is one of those who welded. */
export const signedByWelder: readonly Rule[] = papers.map(({ kind, who, welded }) =>
  rule({
    id: `${kind}-signed-by-welder`,
    title: `Who signs ${aKind(kind)} as welder is one of those who welded`,
    basis: ownChoice("a welder answers with his signature for what he welded himself"),
    kind,
    when: [...welded, { path: "signatures", exists: true }],
    severity: "nonconformity",
    owner: "welding coordination",
    inputs: {
      welders: list(text(who)),
      signatures: anyOf(
        things("signatures[]", { role: text("role"), named: text("person"), person: thing("person", {}) }),
      ),
    },
    *check({ welders, signatures }, log) {
      for (const signature of signatures) {
        if (!roles.includes(signature.role) || welders.includes(signature.person.$.id)) continue;
        yield {
          at: [signature, "named"],
          on: signature,
          name: signature.person.$.id,
          accuses: [[signature, "named"]],
          message: `${signature.person.$.id} signed ${kindName(kind)} ${log.name} as ${signature.role}; it was welded by ${[...new Set(welders)].join(" and ")}`,
          why: "who did not weld cannot answer for the weld",
          hint: "compare with the paper and correct the name, or the welders of the runs",
        };
      }
    },
    examples: [
      { name: "one of two", given: signed("welder", "W03"), objections: [] },
      { name: "the coordinator too", given: signed("welding coordinator", "M1"), objections: [] },
      {
        name: "somebody else",
        given: signed("welder", "W07"),
        objections: [`W07 signed ${kindName(kind)} X-01 as welder; it was welded by W03 and W12`],
      },
    ],
  }),
);

function signed(role: string, person: string) {
  return { welders: ["W03", "W12", "W03"], signatures: [{ role, named: person, person: { $: person } }] };
}

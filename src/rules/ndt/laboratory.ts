import { commonPractice } from "../../model/basis.ts";
import { anyOf, optional, text, thing, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { holds, person } from "../shared/roles.ts";
import { aKind } from "../shared/words.ts";

/** Kinds whose tests a laboratory may have made, and the field that names who made them. */
const laboratories = [
  ["tester-of-laboratory", "ndt-report", "operator"],
  ["hardness-of-laboratory", "hardness-report", "by"],
  ["leak-test-of-laboratory", "leak-test", "by"],
  ["alloy-of-laboratory", "alloy-report", "by"],
] as const;

const employed = laboratories.map(([id, kind, tester]) =>
  rule({
    id,
    title: `Who tested for ${aKind(kind)} works for the laboratory that reports`,
    basis: commonPractice("a laboratory reports what its own people tested"),
    kind,
    // A firm that tests nothing is found by what it is registered for.
    when: [
      { path: "laboratory", exists: true },
      { path: "laboratory.roles[]", equals: ["testing", "laboratory"] },
    ],
    severity: "query",
    owner: "testing",
    inputs: {
      named: text("laboratory"),
      laboratory: thing("laboratory", {}),
      operator: thing(tester, { employer: thing("employer", {}) }),
    },
    *check({ laboratory, operator }, report) {
      if (operator.employer.$.id !== laboratory.$.id)
        yield {
          at: "named",
          accuses: [],
          message: `report ${report.name} is by ${laboratory.$.name}; ${operator.$.name}, who tested, works for ${operator.employer.$.name}`,
          why: "the register of people names another employer",
          hint: "compare with the report; correct firm or person, or answer this query with the agreement under which the person tested",
          related: [{ at: [operator, "employer"], message: `${operator.employer.$.name} here` }],
        };
    },
    examples: [
      {
        name: "its own tester",
        given: { laboratory: { $: "L1" }, operator: { $: "N1", employer: { $: "L1" } } },
        objections: [],
      },
      {
        name: "somebody else's",
        given: { laboratory: { $: "L1" }, operator: { $: "N1", employer: { $: "L2" } } },
        objections: ["report X-01 is by L1; N1, who tested, works for L2"],
      },
    ],
  }),
);

const signing = rule({
  id: "report-signed-by-tester",
  title: "A report of tests is signed as tester by who tested, supervised or reviewed",
  basis: commonPractice("who signs as tester vouches for what he saw"),
  kind: "ndt-report",
  when: [{ path: 'signatures[role="testing"].person', exists: true }],
  severity: "query",
  owner: "testing",
  inputs: {
    operator: thing("operator", {}),
    reviewer: thing("reviewer", {}),
    supervisor: optional(thing("supervisor", {})),
    signers: anyOf(things('signatures[role="testing"]', { person: thing("person", person) })),
  },
  *check({ operator, reviewer: other, supervisor, signers }, report) {
    const known = [operator.$.id, other.$.id, ...(supervisor === undefined ? [] : [supervisor.$.id])];
    for (const signer of signers)
      // Who is no tester at all is found by the role.
      if (!known.includes(signer.person.$.id) && holds(signer.person, ["testing"], undefined))
        yield {
          at: [signer, "person"],
          accuses: [],
          name: signer.person.$.id,
          message: `report ${report.name} is signed as tester by ${signer.person.$.name}; ${operator.$.name} tested and ${other.$.name} reviewed`,
          why: "the signature is of neither",
          hint: "compare with the report; correct who tested, who reviewed or who signed",
        };
  },
  examples: [
    { name: "the operator", given: signedBy("N1"), objections: [] },
    { name: "the supervisor", given: { ...signedBy("N5"), supervisor: { $: "N5" } }, objections: [] },
    {
      name: "somebody else",
      given: signedBy("N2"),
      objections: ["report X-01 is signed as tester by N2; N1 tested and N3 reviewed"],
    },
  ],
});

function signedBy(id: string) {
  return {
    operator: { $: "N1" },
    reviewer: { $: "N3" },
    signers: [{ person: { $: id, roles: [{ role: "testing" }] } }],
  };
}

/** Who stands behind a report of tests. */
export const reportPeople: readonly Rule[] = [...employed, signing];

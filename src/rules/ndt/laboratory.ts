import { commonPractice, fromMemory } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, text, thing, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { holds, person } from "../shared/roles.ts";
import { certifiedMethod } from "../../requirements/testing-conditions.ts";

const employed = rule({
  id: "tester-of-laboratory",
  title: "Who tested works for the laboratory that reports",
  basis: commonPractice("a laboratory reports what its own people tested"),
  kind: "ndt-report",
  // A firm that tests nothing is found by what it is registered for.
  when: [
    { path: "laboratory", exists: true },
    { path: "laboratory.roles[]", equals: ["testing", "laboratory"] },
  ],
  severity: "query",
  owner: "testing",
  inputs: {
    laboratory: thing("laboratory", {}),
    operator: thing("operator", { employer: thing("employer", {}) }),
  },
  *check({ laboratory, operator }, report) {
    if (operator.employer.$.id !== laboratory.$.id)
      yield {
        at: "laboratory",
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
});

const enough: readonly string[] = ["2", "3"];

const reviewer = rule({
  id: "reviewer-certified",
  title: "Who reviews a report is certified in its method, level 2 or 3",
  basis: fromMemory(
    "ISO 9712",
    undefined,
    "what each level may do: results are interpreted and reports approved from level 2",
  ),
  kind: "ndt-report",
  when: [certifiedMethod],
  severity: "query",
  owner: "testing",
  inputs: {
    method: text("method"),
    day: date("date"),
    reviewer: thing("reviewer", {
      certificates: anyOf(
        things("<ndt-personnel:person>", {
          method: text("method"),
          level: text("level"),
          from: date("issued"),
          to: date("validTo"),
        }),
      ),
    }),
  },
  *check({ method, day, reviewer: who }, report) {
    const own = who.certificates.filter((one) => one.method === method);
    if (
      own.some(
        ({ level, from, to }) =>
          enough.includes(level) && canPrecede(from, day) !== "no" && canPrecede(day, to) !== "no",
      )
    )
      return;
    yield {
      at: "reviewer",
      accuses: [],
      message: `${who.$.name} reviewed report ${report.name} of ${day.day} without a certificate of level 2 or 3 in ${method}`,
      why:
        own.length === 0
          ? `no certificate in ${method} is on record`
          : own.map(({ $, level, from, to }) => `${$.name}: level ${level}, ${from.day} to ${to.day}`).join("; "),
      hint: "add the certificate, or have the report reviewed by who is certified",
    };
  },
  examples: [
    { name: "level 3", given: reviewed("3"), objections: [] },
    {
      name: "level 1",
      given: reviewed("1"),
      objections: ["N3 reviewed report X-01 of 2026-03-10 without a certificate of level 2 or 3 in RT"],
    },
    {
      name: "without any",
      given: { ...reviewed("3"), reviewer: { $: "N3", certificates: [] } },
      objections: ["N3 reviewed report X-01 of 2026-03-10 without a certificate of level 2 or 3 in RT"],
    },
  ],
});

function reviewed(level: string) {
  return {
    method: "RT",
    day: "2026-03-10",
    reviewer: {
      $: "N3",
      certificates: [{ $: "NC-1", method: "RT", level, from: "2022-02-14", to: "2027-02-13" }],
    },
  };
}

const signing = rule({
  id: "report-signed-by-tester",
  title: "A report of tests is signed as tester by who tested or reviewed",
  basis: commonPractice("who signs as tester vouches for what he saw"),
  kind: "ndt-report",
  when: [{ path: 'signatures[role="testing"].person', exists: true }],
  severity: "query",
  owner: "testing",
  inputs: {
    operator: thing("operator", {}),
    reviewer: thing("reviewer", {}),
    signers: anyOf(things('signatures[role="testing"]', { person: thing("person", person) })),
  },
  *check({ operator, reviewer: other, signers }, report) {
    for (const signer of signers)
      // Who is no tester at all is found by the role.
      if (![operator.$.id, other.$.id].includes(signer.person.$.id) && holds(signer.person, ["testing"], undefined))
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
export const reportPeople: readonly Rule[] = [employed, reviewer, signing];

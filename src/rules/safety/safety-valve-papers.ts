import { commonPractice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, quantity, text, thing, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { holds, person } from "../shared/roles.ts";

/** Of the set pressure. */
const leastSeat = 0.8;

const seat = rule({
  id: "valve-seat-pressure",
  title: "The seat of a safety valve is tested a little below its set pressure",
  basis: commonPractice("seat tightness is tested at about nine tenths of the set pressure"),
  kind: "safety-valve",
  severity: "query",
  owner: "supplier",
  inputs: { seat: quantity("bench.seatTestPressure", "bar"), set: quantity("setPressure", "bar") },
  *check({ seat: tested, set }, valve) {
    if (tested.low >= set.value * leastSeat && tested.high < set.value) return;
    yield {
      at: "seat",
      accuses: [],
      message: `the seat of safety valve ${valve.name} was tested at ${tested.text}; it is set at ${set.text}`,
      why: "below eight tenths of it a seat that leaks may hold; at the set pressure the valve opens",
      hint: "compare with the bench record; if it was tested so, answer this query with the procedure, or have it tested again",
      related: [{ at: "set", message: `${set.text} here` }],
    };
  },
  examples: [
    { name: "nine tenths", given: { seat: "9.9 bar", set: "11 bar" }, objections: [] },
    {
      name: "far below",
      given: { seat: "0.99 bar", set: "11 bar" },
      objections: ["the seat of safety valve X-01 was tested at 0.99 bar; it is set at 11 bar"],
    },
    {
      name: "at the set pressure",
      given: { seat: "11 bar", set: "11 bar" },
      objections: ["the seat of safety valve X-01 was tested at 11 bar; it is set at 11 bar"],
    },
  ],
});

const dated = rule({
  id: "valve-certificate-after-bench",
  title: "The certificate of a safety valve is dated on the day of its bench test, or later",
  basis: commonPractice("the certificate of a valve states how it was set"),
  kind: "safety-valve",
  severity: "query",
  owner: "supplier",
  inputs: { set: date("bench.date"), certified: date("certificate.date") },
  *check({ set, certified }, valve) {
    if (canPrecede(set, certified) === "no")
      yield {
        at: "certified",
        accuses: [],
        message: `the certificate of safety valve ${valve.name} is of ${certified.text}; the valve was set on ${set.text}`,
        why: "the certificate is older than the test that set the valve",
        hint: "compare both with the papers; where the valve was set anew, answer this query with that",
        related: [{ at: "set", message: `set on ${set.text}` }],
      };
  },
  examples: [
    { name: "the same day", given: { set: "2026-06-25", certified: "2026-06-25" }, objections: [] },
    {
      name: "before",
      given: { set: "2026-06-25", certified: "2026-06-24" },
      objections: ["the certificate of safety valve X-01 is of 2026-06-24; the valve was set on 2026-06-25"],
    },
  ],
});

const signed = rule({
  id: "valve-signed-by-maker",
  title: "Who signs as supplier of a safety valve works for its maker",
  basis: commonPractice("the maker's own people sign for the maker"),
  kind: "safety-valve",
  when: [
    { path: 'signatures[role="supplier"].person', exists: true },
    // A firm that makes nothing is found by what it is registered for.
    { path: "manufacturer.roles[]", equals: ["supplier", "mill", "maker"] },
  ],
  severity: "query",
  owner: "supplier",
  inputs: {
    maker: thing("manufacturer", {}),
    signers: anyOf(
      things('signatures[role="supplier"]', {
        name: text("person"),
        person: thing("person", { ...person, employer: thing("employer", {}) }),
      }),
    ),
  },
  *check({ maker, signers }, valve) {
    for (const { person: who, name } of signers)
      // Who signs for no supplier at all is found by the role.
      if (who.employer.$.id !== maker.$.id && holds(who, ["supplier"], undefined))
        yield {
          at: "maker",
          accuses: [],
          name,
          message: `safety valve ${valve.name} is made by ${maker.$.name} and signed for by ${who.$.name} of ${who.employer.$.name}`,
          why: "the register of people names another employer",
          hint: "compare with the certificate; correct firm or person, or answer this query with who set the valve for the maker",
          related: [{ at: [who, "employer"], message: `${who.employer.$.name} here` }],
        };
  },
  examples: [
    {
      name: "the maker's own",
      given: {
        maker: { $: "M1" },
        signers: [{ name: "V1", person: { $: "V1", roles: [{ role: "supplier" }], employer: { $: "M1" } } }],
      },
      objections: [],
    },
    {
      name: "of another firm",
      given: {
        maker: { $: "M1" },
        signers: [{ name: "V1", person: { $: "V1", roles: [{ role: "supplier" }], employer: { $: "M2" } } }],
      },
      objections: ["safety valve X-01 is made by M1 and signed for by V1 of M2"],
    },
  ],
});

/** Papers of a safety valve held against each other. */
export const valvePapers: readonly Rule[] = [seat, dated, signed];

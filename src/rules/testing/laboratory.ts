import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { holds, person } from "../shared/roles.ts";

export const calibrationSigned = rule({
  id: "calibration-signed",
  title: "Who signs a calibration works for a laboratory that calibrated the instrument",
  basis: commonPractice("a laboratory's own people sign for it"),
  kind: "instrument",
  when: [
    { path: 'signatures[role="laboratory"].person', exists: true },
    // A firm that calibrates nothing is found by what it is registered for.
    { path: "calibrations[].laboratory.roles[]", equals: ["testing", "laboratory"] },
  ],
  severity: "query",
  owner: "quality",
  inputs: {
    laboratories: list(text("calibrations[].laboratory")),
    signers: anyOf(
      things('signatures[role="laboratory"]', {
        person: thing("person", { ...person, employer: thing("employer", {}) }),
      }),
    ),
  },
  *check({ laboratories, signers }, instrument) {
    const said = new Set<string>();
    for (const { person: who } of signers) {
      // Who signs for no laboratory at all is found by the role.
      if (laboratories.includes(who.employer.$.id) || said.has(who.$.id) || !holds(who, ["laboratory"], undefined))
        continue;
      said.add(who.$.id);
      yield {
        at: "laboratories",
        accuses: [],
        name: who.$.id,
        message: `the calibration of instrument ${instrument.name} is signed by ${who.$.name} of ${who.employer.$.name}; it was calibrated by ${[...new Set(laboratories)].join(", ")}`,
        why: "the register of people names another employer",
        hint: "compare with the calibration certificate; correct laboratory or person",
        related: [{ at: [who, "employer"], message: `${who.employer.$.name} here` }],
      };
    }
  },
  examples: [
    {
      name: "the laboratory's own",
      given: {
        laboratories: ["L1"],
        signers: [{ person: { $: "P1", roles: [{ role: "laboratory" }], employer: { $: "L1" } } }],
      },
      objections: [],
    },
    {
      name: "of another firm",
      given: {
        laboratories: ["L1"],
        signers: [{ person: { $: "P1", roles: [{ role: "laboratory" }], employer: { $: "L2" } } }],
      },
      objections: ["the calibration of instrument X-01 is signed by P1 of L2; it was calibrated by L1"],
    },
  ],
});

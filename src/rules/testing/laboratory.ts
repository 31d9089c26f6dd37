import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const calibrationSigned = rule({
  id: "calibration-signed",
  title: "Who signs a calibration works for a laboratory that calibrated the instrument",
  basis: commonPractice("a laboratory's own people sign for it"),
  kind: "instrument",
  when: [{ path: 'signatures[role="laboratory"].person', exists: true }],
  severity: "query",
  owner: "quality",
  inputs: {
    laboratories: list(text("calibrations[].laboratory")),
    signers: anyOf(
      things('signatures[role="laboratory"]', { person: thing("person", { employer: thing("employer", {}) }) }),
    ),
  },
  *check({ laboratories, signers }, instrument) {
    const said = new Set<string>();
    for (const { person } of signers) {
      if (laboratories.includes(person.employer.$.id) || said.has(person.$.id)) continue;
      said.add(person.$.id);
      yield {
        at: "laboratories",
        accuses: [],
        name: person.$.id,
        message: `the calibration of instrument ${instrument.name} is signed by ${person.$.name} of ${person.employer.$.name}; it was calibrated by ${[...new Set(laboratories)].join(", ")}`,
        why: "the register of people names another employer",
        hint: "compare with the calibration certificate; correct laboratory or person",
        related: [{ at: [person, "employer"], message: `${person.employer.$.name} here` }],
      };
    }
  },
  examples: [
    {
      name: "the laboratory's own",
      given: { laboratories: ["L1"], signers: [{ person: { $: "P1", employer: { $: "L1" } } }] },
      objections: [],
    },
    {
      name: "of another firm",
      given: { laboratories: ["L1"], signers: [{ person: { $: "P1", employer: { $: "L2" } } }] },
      objections: ["the calibration of instrument X-01 is signed by P1 of L2; it was calibrated by L1"],
    },
  ],
});

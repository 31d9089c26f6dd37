import { fromMemory } from "../../model/basis.ts";
import { exists, flag, optional, text, thing } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";

const types = fromMemory("EN 10204", "2004", "types of inspection document");

const complies = rule({
  id: "certificate-complies",
  title: "A material certificate states that the material complies with the order",
  basis: types,
  kind: "material-certificate",
  severity: "nonconformity",
  owner: "purchasing",
  inputs: { complies: flag("statesCompliance"), type: text("type") },
  *check({ complies: stated, type }, certificate) {
    if (!stated)
      yield {
        at: "complies",
        message: `certificate ${certificate.name} of type ${type} does not state that the material complies with the order`,
        why: "every type of inspection document is a statement of compliance",
        hint: "compare with the certificate; if it does not say so, ask the mill for one that does, or raise a nonconformity report",
      };
  },
  examples: [
    { name: "it does", given: { complies: true, type: "3.1" }, objections: [] },
    {
      name: "it does not",
      given: { complies: false, type: "3.1" },
      objections: ["certificate X-01 of type 3.1 does not state that the material complies with the order"],
    },
  ],
});

const countersigned = rule({
  id: "certificate-countersigned",
  title: "A certificate of type 3.2 is countersigned for somebody else than its mill",
  basis: types,
  kind: "material-certificate",
  when: [{ path: "type", equals: "3.2" }],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    named: exists("countersignedBy.name"),
    by: optional(thing("countersignedBy.organisation", {})),
    mill: thing("mill", {}),
  },
  *check({ named, by, mill }, certificate) {
    const hint =
      "compare with the certificate; correct its type, or ask for the document that the purchaser or a body signed too";
    if (!named || by === undefined)
      yield {
        at: "subject",
        accuses: [],
        name: "nobody",
        message: `certificate ${certificate.name} is of type 3.2, and it is not recorded who countersigned it, and for whom`,
        why: "type 3.2 is validated by the mill and by the purchaser or an inspector",
        hint,
      };
    else if (by.$.id === mill.$.id)
      yield {
        at: by,
        accuses: [],
        name: "mill",
        message: `certificate ${certificate.name} of type 3.2 is countersigned for ${by.$.name}, its own mill`,
        why: "the second signature is not the mill's",
        hint,
      };
  },
  examples: [
    { name: "by a body", given: { named: true, by: { $: "PENQUILLITH" }, mill: { $: "M1" } }, objections: [] },
    {
      name: "by nobody",
      given: { named: false, mill: { $: "M1" } },
      objections: ["certificate X-01 is of type 3.2, and it is not recorded who countersigned it, and for whom"],
    },
    {
      name: "by the mill",
      given: { named: true, by: { $: "M1" }, mill: { $: "M1" } },
      objections: ["certificate X-01 of type 3.2 is countersigned for M1, its own mill"],
    },
  ],
});

/** What makes a paper the inspection document that it calls itself. */
export const documentsOfMaterial: readonly Rule[] = [complies, countersigned];

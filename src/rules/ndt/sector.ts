import { text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { personnel } from "./testers.ts";

const standardOf = /\bISO[ /-]*9712\b/i;
/** Sectors of ISO 9712 that cover welds of pressure equipment, and those that say they are of something else. */
const covers = /weld|pressure equipment|multi|in-service|manufactur|\bw\b/i;

export const testerSector = rule({
  id: "tester-sector",
  title: "A tester is certified to ISO 9712, in a sector that covers welds",
  basis: personnel,
  kind: "ndt-personnel",
  severity: "nonconformity",
  owner: "testing",
  inputs: { sector: text("sector"), standard: text("standard.standard") },
  *check({ sector, standard }, certificate) {
    if (!covers.test(sector))
      yield {
        at: "sector",
        name: "sector",
        message: `tester's certificate ${certificate.name} is of the sector "${sector}", which does not say that it covers welds`,
        why: "a certificate holds for the sectors it names",
        hint: "compare with the certificate; add the one that covers welds, or have the tests made again by who holds one",
      };
    if (!standardOf.test(standard))
      yield {
        at: "standard",
        name: "standard",
        unsure: true,
        message: `tester's certificate ${certificate.name} is issued to ${standard}, not to ISO 9712`,
        why: "testers of permanent joints are certified to ISO 9712; other schemes are to be recognised",
        hint: "compare with the certificate; answer this query with the ground on which it is recognised",
      };
  },
  examples: [
    { name: "welds", given: { sector: "welds, pressure equipment", standard: "EN ISO 9712" }, objections: [] },
    { name: "several sectors", given: { sector: "multi-sector", standard: "ISO 9712" }, objections: [] },
    {
      name: "castings",
      given: { sector: "castings", standard: "EN ISO 9712" },
      objections: ['tester\'s certificate X-01 is of the sector "castings", which does not say that it covers welds'],
    },
    {
      name: "another scheme",
      given: { sector: "welds", standard: "SNT-TC-1A" },
      objections: ["tester's certificate X-01 is issued to SNT-TC-1A, not to ISO 9712"],
    },
  ],
});

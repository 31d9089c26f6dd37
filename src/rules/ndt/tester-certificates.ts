import { fromMemory } from "../../model/basis.ts";
import { text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const testerCertifiedByOthers = rule({
  id: "tester-certified-by-others",
  title: "A tester is certified by a body that does not employ him",
  basis: fromMemory("EN ISO 9712", undefined, "a certification body is independent of the employer"),
  kind: "ndt-personnel",
  severity: "query",
  owner: "testing",
  inputs: { body: text("body"), employer: text("person.employer") },
  *check({ body, employer }, certificate) {
    if (body === employer)
      yield {
        at: "body",
        accuses: [],
        message: `certificate ${certificate.name} is issued by ${body}, which employs its holder`,
        why: "the register of people names the same firm",
        hint: "compare with the certificate and the register; a certificate of the employer is none of EN ISO 9712; where the body certifies apart from its testing, answer this query",
        related: [{ at: "employer", message: `${employer} here` }],
      };
  },
  examples: [
    { name: "by another", given: { body: "PENQUILLITH", employer: "GLIMMERFIELD" }, objections: [] },
    {
      name: "by the employer",
      given: { body: "GLIMMERFIELD", employer: "GLIMMERFIELD" },
      objections: ["certificate X-01 is issued by GLIMMERFIELD, which employs its holder"],
    },
  ],
});

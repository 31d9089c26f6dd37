import { commonPractice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Treatments that make a formed end what its certificate says it is. */
export const renewing = ["normalising", "tempering", "solution annealing"];

export const certifiedAfterTreatment = rule({
  id: "certified-after-treatment",
  title: "A formed end is certified after the heat treatment that gave it its condition",
  basis: commonPractice("results on the certificate of a formed end are of test pieces that were treated with it"),
  kind: "piece-mark",
  when: [
    { path: "certificateRow.form", equals: "formed-end" },
    { path: "part.<heat-treatment:parts[]>.finished", exists: true },
  ],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    certificate: thing("certificateRow.record", { issued: date("issued") }),
    charges: anyOf(things("part.<heat-treatment:parts[]>", { type: text("type"), finished: date("finished") })),
  },
  *check({ certificate, charges }, mark) {
    for (const charge of charges) {
      const { type, finished } = charge;
      if (!renewing.includes(type) || canPrecede(finished, certificate.issued) !== "no") continue;
      yield {
        at: [charge, "finished"],
        on: charge,
        accuses: [],
        message: `certificate ${certificate.$.name} was issued on ${certificate.issued.text}, before the ${type} of what it certifies, ${charge.$.name}, was finished on ${finished.text}`,
        why: `piece ${mark.name}: results that were printed before are not of the steel as it was treated`,
        hint: "compare both days with the papers; if they are right, have test pieces treated alike tested and certified",
        related: [{ at: [certificate, "issued"], message: `issued on ${certificate.issued.text}` }],
      };
    }
  },
  examples: [
    { name: "after", given: treated("normalising", "2026-04-22T10:12+02:00"), objections: [] },
    { name: "stress relieved later, with the vessel", given: treated("stress relief", "2026-06-22"), objections: [] },
    {
      name: "before",
      given: treated("normalising", "2026-04-28"),
      objections: [
        "certificate CRT-001 was issued on 2026-04-24, before the normalising of what it certifies, HT-01, was finished on 2026-04-28",
      ],
    },
  ],
});

function treated(type: string, finished: string) {
  return { certificate: { $: "CRT-001", issued: "2026-04-24" }, charges: [{ $: "HT-01", type, finished }] };
}

/** Words of functions that make or sell what they certify. */
const dependent = /\b(?:production|manufacturing manager|rolling|melt shop|foreman|sales|works manager|dispatch)\b/iu;

export const validatedIndependently = rule({
  id: "certificate-validated-independently",
  title: "Who validates a certificate of type 3.1 or 3.2 is independent of manufacture",
  basis: commonPractice(
    "EN 10204 has it validated by a representative who is independent of the manufacturing department",
  ),
  kind: "material-certificate",
  when: [
    { path: "type", equals: ["3.1", "3.2"] },
    { path: "validatedBy.function", exists: true },
  ],
  severity: "query",
  owner: "purchasing",
  inputs: { type: text("type"), role: text("validatedBy.function") },
  *check({ type, role }, certificate) {
    if (!dependent.test(role) || /independent/iu.test(role)) return;
    yield {
      at: "role",
      message: `certificate ${certificate.name} of type ${type} was validated by: ${role}`,
      why: "that it was somebody independent of manufacture is what tells types 3.1 and 3.2 from 2.2",
      hint: "compare with the certificate; if it says so, ask for one that the inspection representative validated",
    };
  },
  examples: [
    { name: "as usual", given: { type: "3.1", role: "inspection representative" }, objections: [] },
    {
      name: "said to be independent",
      given: { type: "3.1", role: "quality, independent of production" },
      objections: [],
    },
    {
      name: "who made it",
      given: { type: "3.1", role: "head of production" },
      objections: ["certificate X-01 of type 3.1 was validated by: head of production"],
    },
  ],
});

import type { BodyCertificate, Declaration, Issue, Nameplate } from "../../generated/records.ts";

const restated = {
  maximumAllowablePressure: "11 bar",
  maximumAllowableTemperature: "60 °C",
  minimumAllowableTemperature: "-10 °C",
  volume: "3000 l",
  fluidGroup: "2",
  category: "IV",
  module: "B+F",
  bodyNumber: "0000",
} as const;
const tested = { testPressure: "15.8 bar", testDate: "2026-06-23" };
const maker = { makerName: "Tarnequill Boiler Works", makerAddress: "Ostrelwharf 3, Lintharrow, Varrenmark" };

/** Day of the body's certificate; the plate bears the body's number from the day after, when it had arrived. */
const released = "2026-07-13";

export const bodyCertificates: readonly BodyCertificate[] = [
  {
    id: "BC-01",
    equipment: "TQ423-01",
    number: "PQ-B-26-0041",
    type: "EU-type examination",
    body: "PENQUILLITH",
    ...restated,
    drawings: ["DRG-01@B", "DRG-03@B"],
    date: "2026-05-13",
    validTo: "2036-05-12",
    signatory: "E2",
    signatures: [{ role: "inspection body", person: "E2", date: "2026-05-13" }],
  },
  {
    id: "BC-02",
    equipment: "TQ423-01",
    number: "PQ-F-26-0093",
    type: "product verification",
    body: "PENQUILLITH",
    serial: "TQ423-01",
    year: 2026,
    ...restated,
    ...tested,
    drawings: ["DRG-01@B", "DRG-02@B", "DRG-03@B", "DRG-04@A"],
    date: released,
    signatory: "E2",
    signatures: [{ role: "inspection body", person: "E2", date: released }],
  },
];

export const nameplate: Nameplate = {
  id: "NP-01",
  equipment: "TQ423-01",
  ...maker,
  type: "AR 3000-11",
  serial: "TQ423-01",
  year: 2026,
  ...restated,
  ...tested,
  setPressure: "11 bar",
  ceMark: true,
  fixed: "2026-07-14",
};

export const declaration: Declaration = {
  id: "EU-01",
  equipment: "TQ423-01",
  number: "TQ423-EU-01",
  ...maker,
  soleResponsibility: true,
  description: "Compressed-air receiver, horizontal, 3000 l, type AR 3000-11, serial TQ423-01, made in 2026",
  legislation: ["Directive 2014/68/EU"],
  standards: [
    { row: "1", standard: "EN 13445-2", edition: "2021" },
    { row: "2", standard: "EN 13445-3", edition: "2021" },
    { row: "3", standard: "EN 13445-4", edition: "2021" },
    { row: "4", standard: "EN 13445-5", edition: "2021" },
  ],
  serial: "TQ423-01",
  year: 2026,
  ...restated,
  ...tested,
  bodyName: "Penquillith Inspection, Quillgate 9, Lintharrow, Varrenmark",
  bodyCertificates: ["BC-01", "BC-02"],
  place: "Lintharrow",
  date: "2026-07-15",
  signatory: "K1",
  function: "managing director",
  signatures: [{ role: "authorised signatory", person: "K1", date: "2026-07-15" }],
};

const reached: readonly (readonly [string, string])[] = [
  ["order", "2026-01-19"],
  ["design-approved", "2026-03-20"],
  ["material-received", "2026-05-18"],
  ["cutting", "2026-05-19"],
  ["welding", "2026-06-12"],
  ["testing-complete", "2026-06-17"],
  ["pressure-test", "2026-06-23"],
  ["coating", "2026-07-03"],
  ["final-inspection", "2026-07-10"],
  ["release", "2026-07-17"],
];

/** Days an interim issue plans; of the coating nobody can say yet. */
const planned: ReadonlyMap<string, string> = new Map([
  ["welding", "2026-06-12"],
  ["testing-complete", "2026-06-18"],
  ["pressure-test", "2026-06-23"],
  ["final-inspection", "2026-07-10"],
  ["release", "2026-07-17"],
]);

const history: NonNullable<Issue["history"]> = [
  { revision: "P1", state: "interim", date: "2026-03-23", reason: "design approved" },
  { revision: "P2", state: "interim", date: "2026-05-20", reason: "materials received and cut" },
  { revision: "P3", state: "interim", date: "2026-06-08", reason: "longitudinal seams and first circumferential seam" },
  { revision: "0", state: "final", date: "2026-07-17", reason: "release" },
];

/** The issue of the book with the evidence up to a day: final, or interim with the milestones reached by then. */
export function issueOf(revision: string, dataCutOff: string): Issue {
  const own = history.findIndex((one) => one.revision === revision);
  const issue = history[own];
  if (issue === undefined) throw new Error(`the history knows no revision ${revision}`);
  return {
    id: "ISSUE",
    revision,
    state: issue.state ?? "interim",
    issueDate: issue.date ?? dataCutOff,
    dataCutOff,
    milestones: reached.map(([name, day]) => {
      const said = day <= dataCutOff ? day : planned.get(name);
      return said === undefined ? { name } : { name, reached: said };
    }),
    history: history.slice(0, own + 1),
  };
}

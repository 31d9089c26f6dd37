import type { BodyCertificate, Declaration, Issue, Nameplate } from "../../generated/records.ts";
import { equipment } from "./boiler.ts";
import { drawings, restated } from "./drawings.ts";
import { organisationOf } from "../../shop/firms.ts";
import { pressureTest, testDay } from "./pressure-test.ts";
import { safetyValves } from "./safety-valves.ts";

const maker = organisationOf("TARNEQUILL");
const body = organisationOf("PENQUILLITH");

const makerShown = {
  makerName: maker.name,
  ...(maker.address !== undefined && { makerAddress: maker.address }),
};
const assessed = {
  ...restated,
  ...(pressureTest.testPressure !== undefined && { testPressure: pressureTest.testPressure }),
  testDate: testDay,
  ...(equipment.directive?.module !== undefined && { module: equipment.directive.module }),
  ...(body.number !== undefined && { bodyNumber: body.number }),
};

/** The revision of a drawing that was built. */
const built = drawings.map(({ id, revisions = [] }) => `${id}@${revisions.at(-1)?.revision ?? ""}`);

export const bodyCertificate: BodyCertificate = {
  id: "BC-01",
  equipment: equipment.id,
  number: "PQ-G-26-0052",
  type: "unit verification",
  body: body.id,
  ...assessed,
  drawings: built,
  date: "2026-05-19",
  signatory: "E2",
  signatures: [{ role: "inspection body", person: "E2", date: "2026-05-19" }],
};

export const nameplate: Nameplate = {
  id: "NP-01",
  equipment: equipment.id,
  ...makerShown,
  type: "TQS 4000-10",
  ...(equipment.duty?.steamOutput !== undefined && { steamOutput: equipment.duty.steamOutput }),
  ...assessed,
  setPressure: safetyValves[0]?.setPressure ?? "",
  ceMark: true,
  fixed: "2026-05-20",
};

export const declaration: Declaration = {
  id: "EU-01",
  equipment: equipment.id,
  number: "TQ417-EU-01",
  ...makerShown,
  soleResponsibility: true,
  description:
    "Three-pass wet-back shell boiler for saturated steam, 4000 kg/h, fired with gas, type TQS 4000-10, serial TQ417-01, made in 2026, with two safety valves PSV-211 and PSV-212",
  legislation: ["Directive 2014/68/EU"],
  standards: [
    { row: "1", standard: "EN 12953-1", edition: "2012" },
    { row: "2", standard: "EN 12953-2", edition: "2012" },
    { row: "3", standard: "EN 12953-3", edition: "2016" },
    { row: "4", standard: "EN 12953-4", edition: "2018" },
    { row: "5", standard: "EN 12953-5", edition: "2020" },
    { row: "6", standard: "Indian Boiler Regulations", edition: "1950" },
    { row: "7", standard: "EN 13445-3", edition: "2021" },
  ],
  ...assessed,
  bodyName: `${body.name}, ${body.address ?? ""}`,
  bodyCertificates: [bodyCertificate.id],
  place: "Lintharrow",
  date: "2026-05-20",
  signatory: "K1",
  function: "managing director",
  signatures: [{ role: "authorised signatory", person: "K1", date: "2026-05-20" }],
};

const reached: readonly (readonly [string, string])[] = [
  ["order", "2026-01-12"],
  ["design-approved", "2026-02-06"],
  ["material-received", "2026-02-20"],
  ["cutting", "2026-02-26"],
  ["welding", "2026-04-20"],
  ["testing-complete", "2026-04-23"],
  ["pressure-test", testDay],
  ["coating", "2026-05-04"],
  ["final-inspection", "2026-05-15"],
  ["release", "2026-05-22"],
];

export const issue: Issue = {
  id: "ISSUE",
  revision: "0",
  state: "final",
  issueDate: "2026-05-22",
  dataCutOff: "2026-05-22",
  milestones: reached.map(([name, day]) => ({ name, reached: day })),
  history: [
    { revision: "P1", state: "interim", date: "2026-02-09", reason: "design approved" },
    { revision: "P2", state: "interim", date: "2026-02-27", reason: "materials received and cut" },
    { revision: "P3", state: "interim", date: "2026-04-24", reason: "welded and tested" },
    { revision: "0", state: "final", date: "2026-05-22", reason: "release" },
  ],
};

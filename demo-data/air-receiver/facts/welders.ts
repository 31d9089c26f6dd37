import type { ConsumableBatch, NdtPersonnel, WelderQualification } from "../../../src/generated/records.ts";

type Qualification = WelderQualification;
const en9606 = { standard: "EN ISO 9606-1", edition: "2017" };

const qualification = (
  id: string,
  person: string,
  certificate: string,
  own: Partial<Qualification>,
  testDate: string,
  validTo: string,
  confirmations: readonly (readonly [string, string])[],
): Qualification => ({
  id,
  person,
  certificate,
  standard: en9606,
  weldType: "butt",
  fillerGroup: "FM1",
  fillerType: "S",
  detail: "ss nb",
  supplementaryFillet: false,
  ...own,
  testDate,
  examiner: "E. Cairnhollow",
  body: "PENQUILLITH",
  thirdPartyApproval: true,
  route: "9.3b",
  validTo,
  confirmations: confirmations.map(([date, evidence]) => ({ date, by: "M1", evidence })),
});

const magPlate: Partial<Qualification> = {
  designation: "EN ISO 9606-1 135 P BW FM1 S s8 PA ss nb",
  process: "135",
  transferMode: "spray",
  product: "plate",
  thickness: "8.0 mm",
  positions: ["PA"],
  range: {
    processes: ["135", "138"],
    products: ["plate", "pipe"],
    weldTypes: ["butt"],
    fillerGroups: ["FM1", "FM2"],
    thickness: { minimum: "3.0 mm", maximum: "16.0 mm" },
    outsideDiameter: { minimum: "500 mm" },
    positions: ["PA"],
    details: ["ss nb", "ss mb", "ss gb", "ss fb", "bs"],
  },
};

const magPipe: Partial<Qualification> = {
  designation: "EN ISO 9606-1 135 T BW FM1 S s8 D168.3 H-L045 ss nb",
  process: "135",
  transferMode: "dip",
  product: "pipe",
  thickness: "8.0 mm",
  outsideDiameter: "168.3 mm",
  positions: ["H-L045"],
  range: {
    processes: ["135", "138"],
    products: ["plate", "pipe"],
    weldTypes: ["butt"],
    fillerGroups: ["FM1", "FM2"],
    thickness: { minimum: "3.0 mm", maximum: "16.0 mm" },
    outsideDiameter: { minimum: "84.2 mm" },
    positions: ["PA", "PC", "PE", "PF", "PH", "H-L045"],
    details: ["ss nb", "ss mb", "ss gb", "ss fb", "bs"],
  },
};

const tigPipe: Partial<Qualification> = {
  designation: "EN ISO 9606-1 141 T BW FM1 S s5 D60.3 H-L045 ss nb",
  process: "141",
  product: "pipe",
  thickness: "5.0 mm",
  outsideDiameter: "60.3 mm",
  positions: ["H-L045"],
  range: {
    processes: ["141", "142", "143", "145"],
    products: ["plate", "pipe"],
    weldTypes: ["butt"],
    fillerGroups: ["FM1", "FM2"],
    thickness: { minimum: "3.0 mm", maximum: "10.0 mm" },
    outsideDiameter: { minimum: "30.2 mm" },
    positions: ["PA", "PC", "PE", "PF", "PH", "H-L045"],
    details: ["ss nb", "ss mb", "ss gb", "ss fb", "bs"],
  },
};

const tigPlate: Partial<Qualification> = {
  designation: "EN ISO 9606-1 141 P BW FM1 S s6 PF ss nb",
  process: "141",
  product: "plate",
  thickness: "6.0 mm",
  positions: ["PF"],
  range: {
    processes: ["141", "142", "143", "145"],
    products: ["plate", "pipe"],
    weldTypes: ["butt"],
    fillerGroups: ["FM1", "FM2"],
    thickness: { minimum: "3.0 mm", maximum: "12.0 mm" },
    outsideDiameter: { minimum: "500 mm" },
    positions: ["PA", "PF"],
    details: ["ss nb", "ss mb", "ss gb", "ss fb", "bs"],
  },
};

export const welderQualifications: readonly Qualification[] = [
  qualification("WQ-03-1", "W03", "PQ-W-20714", magPlate, "2025-06-10", "2027-06-09", [
    ["2025-11-28", "job TQ409, joint L2"],
    ["2026-05-20", "job TQ418, joint C1"],
  ]),
  qualification("WQ-03-2", "W03", "PQ-W-20715", magPipe, "2025-06-11", "2027-06-10", [
    ["2025-11-28", "job TQ409, joint N08"],
    ["2026-05-20", "job TQ418, joint N02"],
  ]),
  qualification("WQ-03-3", "W03", "PQ-W-20808", tigPipe, "2025-09-16", "2027-09-15", [
    ["2026-02-27", "job TQ415, joint N05"],
  ]),
  qualification("WQ-07-1", "W07", "PQ-W-20698", magPlate, "2025-05-06", "2027-05-05", [
    ["2025-10-30", "job TQ408, joint C3"],
    ["2026-04-22", "job TQ417, joint L1"],
  ]),
  qualification("WQ-07-2", "W07", "PQ-W-20821", tigPlate, "2025-10-08", "2027-10-07", [
    ["2026-04-02", "job TQ416, repair C1R1"],
  ]),
];

export const batches: readonly ConsumableBatch[] = [
  {
    id: "B-2217",
    type: "wire",
    designation: "EN ISO 14341-A - G 42 4 M21 3Si1",
    tradeName: "Sorrelarc S3",
    manufacturer: "SORRELARC",
    processes: ["135"],
    fillerGroup: "FM1",
    diameter: "1.2 mm",
    batch: "S3-26-0147",
    quantity: "180 kg",
    received: "2026-05-18",
    certificate: { number: "SA-77120", type: "3.1", issued: "2026-04-29", batch: "S3-26-0147" },
  },
  {
    id: "B-2219",
    type: "rod",
    designation: "EN ISO 636-A - W 42 5 W3Si1",
    tradeName: "Sorrelarc T3",
    manufacturer: "SORRELARC",
    processes: ["141"],
    fillerGroup: "FM1",
    diameter: "2.4 mm",
    batch: "T3-26-0061",
    quantity: "25 kg",
    received: "2026-05-18",
    certificate: { number: "SA-77133", type: "3.1", issued: "2026-04-30", batch: "T3-26-0061" },
  },
  {
    id: "B-2230",
    type: "shielding gas",
    designation: "EN ISO 14175 - M21",
    tradeName: "Sorrelarc Mix 18",
    manufacturer: "SORRELARC",
    processes: ["135"],
    batch: "MX-26-1882",
    received: "2026-05-18",
    certificate: { number: "SG-40412", type: "2.2", issued: "2026-05-11", batch: "MX-26-1882" },
  },
  {
    id: "B-2231",
    type: "shielding gas",
    designation: "EN ISO 14175 - I1",
    tradeName: "Sorrelarc Argon",
    manufacturer: "SORRELARC",
    processes: ["141"],
    batch: "AR-26-0930",
    received: "2026-05-18",
    certificate: { number: "SG-40418", type: "2.2", issued: "2026-05-11", batch: "AR-26-0930" },
  },
];

const tester = (
  id: string,
  person: string,
  method: NdtPersonnel["method"],
  level: "2" | "3",
  certificate: string,
  issued: string,
  validTo: string,
  visionTest: string,
): NdtPersonnel => ({
  id,
  person,
  method,
  level,
  sector: "welds, pressure equipment",
  certificate,
  standard: { standard: "EN ISO 9712", edition: "2022" },
  body: "PENQUILLITH",
  issued,
  validTo,
  visionTest,
  employerAuthorisation: "2026-01-15",
  thirdPartyApproval: true,
});

export const ndtPersonnel: readonly NdtPersonnel[] = [
  tester("NC-N1-VT", "N1", "VT", "2", "PQ-9712-0551", "2023-03-20", "2028-03-19", "2026-01-12"),
  tester("NC-N1-MT", "N1", "MT", "2", "PQ-9712-0552", "2023-03-20", "2028-03-19", "2026-01-12"),
  tester("NC-N1-PT", "N1", "PT", "2", "PQ-9712-0553", "2023-03-20", "2028-03-19", "2026-01-12"),
  tester("NC-N2-RT", "N2", "RT", "2", "PQ-9712-0554", "2023-11-06", "2028-11-05", "2026-01-12"),
  tester("NC-N3-RT", "N3", "RT", "3", "PQ-9712-0417", "2022-02-14", "2027-02-13", "2026-02-02"),
  tester("NC-N3-MT", "N3", "MT", "3", "PQ-9712-0418", "2022-02-14", "2027-02-13", "2026-02-02"),
  tester("NC-N3-PT", "N3", "PT", "3", "PQ-9712-0419", "2022-02-14", "2027-02-13", "2026-02-02"),
  tester("NC-N3-VT", "N3", "VT", "3", "PQ-9712-0420", "2022-02-14", "2027-02-13", "2026-02-02"),
];

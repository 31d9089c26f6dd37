import type { Book, Equipment, Joint, Part } from "../../../src/generated/records.ts";

/** The vessel: a horizontal air receiver on two loose saddles, so that nothing but nozzles is welded to its shell. */

export const book: Book = {
  id: "TQ423-MDB",
  format: 1,
  number: "TQ423-MDB-01",
  title: "Compressed-air receiver, 3000 l",
  demonstration: true,
  language: "en",
  requireVerifiedBasis: false,
  profile: "ped-en-13445",
  register: "unfired-vessel",
  contractNumber: "PW-1187",
  orderDate: "2026-01-19",
  maker: "TARNEQUILL",
  client: "PEBBLEWRIGHT",
  inspectionBody: "PENQUILLITH",
  site: "Compressor house 2, Nether Quellby, Varrenmark",
};

export const equipment: Equipment = {
  id: "TQ423-01",
  serial: "TQ423-01",
  tag: "V-310",
  name: "compressed-air receiver",
  type: "air-receiver",
  year: 2026,
  designStandard: { standard: "EN 13445", edition: "2021" },
  directive: { inScope: true, category: "IV", module: "B+F" },
  fluid: { name: "compressed air", group: "2", state: "gas" },
  limits: {
    maximumAllowablePressure: "11 bar",
    maximumAllowableTemperature: "60 °C",
    minimumAllowableTemperature: "-10 °C",
  },
  volume: "3000 l",
  calculationPressure: "11 bar",
  calculationTemperature: "60 °C",
  testPressure: "15.8 bar",
  corrosionAllowance: "1.0 mm",
  requiredFlow: "1800 kg/h",
  requiredFlowSource: "compressor K-311, delivery at 11 bar as on its plate",
  emptyMass: "838 kg",
};

const arrangement = "DRG-01@B";
const details = "DRG-03@B";

const course = (id: string, name: string, measuredThickness: string[]): Part => ({
  id,
  name,
  role: "shell-course",
  drawing: arrangement,
  pressureBearing: true,
  quantity: 1,
  material: { standard: "EN 10028-2", edition: "2017", grade: "P265GH", form: "plate" },
  nominalThickness: "8.0 mm",
  measuredThickness,
  thicknessUndertolerance: "0.3 mm",
  corrosionAllowance: "1.0 mm",
  insideDiameter: "1184 mm",
  outsideDiameter: "1200 mm",
  length: "1125 mm",
  weldCoefficient: "0.85",
  requiredCertificateType: "3.1",
  madeBy: "TARNEQUILL",
});

const end = (id: string, name: string, measuredThickness: string[]): Part => ({
  id,
  name,
  role: "end",
  drawing: arrangement,
  pressureBearing: true,
  quantity: 1,
  material: { standard: "EN 10028-2", edition: "2017", grade: "P265GH", form: "formed-end" },
  nominalThickness: "8.0 mm",
  minimumThickness: "7.0 mm",
  measuredThickness,
  thicknessUndertolerance: "1.0 mm",
  corrosionAllowance: "1.0 mm",
  insideDiameter: "1184 mm",
  outsideDiameter: "1200 mm",
  length: "348 mm",
  crownRadius: "960 mm",
  knuckleRadius: "185 mm",
  weldCoefficient: "1.00",
  requiredCertificateType: "3.1",
  madeBy: "BOWLTHORNE",
});

const forged = (id: string, name: string, role: "flange" | "blind-flange", sizes: Partial<Part>): Part => ({
  id,
  name,
  role,
  drawing: details,
  pressureBearing: true,
  quantity: 1,
  material: { standard: "EN 10222-2", edition: "2017", grade: "P245GH", form: "forging" },
  ...sizes,
  requiredCertificateType: "3.1",
});

const pipeNozzle = (id: string, name: string): Part => ({
  id,
  name,
  role: "nozzle-neck",
  drawing: details,
  pressureBearing: true,
  quantity: 1,
  material: { standard: "EN 10216-2", edition: "2013+A1:2019", grade: "P265GH", form: "tube", options: "TC1" },
  nominalThickness: "4.5 mm",
  thicknessUndertolerance: "0.6 mm",
  corrosionAllowance: "1.0 mm",
  outsideDiameter: "33.7 mm",
  length: "120 mm",
  requiredCertificateType: "3.1",
});

const bolting = (id: string, name: string, grade: string, nominalThickness: string): Part => ({
  id,
  name,
  role: "bolting",
  drawing: details,
  pressureBearing: true,
  quantity: 12,
  material: { standard: "EN 10269", edition: "2013", grade, form: "bolting" },
  nominalThickness,
  requiredCertificateType: "3.1",
});

const neck = (thickness: string, outsideDiameter: string, length: string): Partial<Part> => ({
  nominalThickness: thickness,
  outsideDiameter,
  length,
});

export const parts: readonly Part[] = [
  course("P01", "shell course 1", ["8.1 mm", "8.0 mm", "8.1 mm", "8.2 mm"]),
  course("P02", "shell course 2", ["8.2 mm", "8.1 mm", "8.1 mm", "8.0 mm"]),
  end("P03", "end 1, left", ["7.9 mm", "7.6 mm", "7.4 mm", "7.6 mm", "7.5 mm", "8.0 mm"]),
  end("P04", "end 2, right", ["8.0 mm", "7.5 mm", "7.3 mm", "7.6 mm", "7.6 mm", "7.9 mm"]),
  forged("P05", "nozzle N1, inlet DN 80, long welding neck", "flange", neck("8.0 mm", "88.9 mm", "180 mm")),
  forged("P06", "nozzle N2, outlet DN 80, long welding neck", "flange", neck("8.0 mm", "88.9 mm", "180 mm")),
  forged("P07", "nozzle N3, safety valve DN 50, long welding neck", "flange", neck("7.1 mm", "60.3 mm", "160 mm")),
  pipeNozzle("P08", "nozzle N4, drain, threaded R 1"),
  pipeNozzle("P09", "nozzle N5, pressure gauge, threaded R 1"),
  forged(
    "P10",
    "nozzle N6, inspection opening DN 300, long welding neck",
    "flange",
    neck("12.5 mm", "323.9 mm", "190 mm"),
  ),
  forged("P11", "blind flange of N6, DN 300 PN 16", "blind-flange", neck("28.0 mm", "460 mm", "28 mm")),
  bolting("P12", "stud bolts M24 of N6", "25CrMo4", "24.0 mm"),
  bolting("P13", "nuts M24 of N6", "C35E", "24.0 mm"),
];

const contract = "order PW-1187, technical part, 4.2";

const seam = (id: string, role: "longitudinal" | "circumferential", joined: string[], length: string): Joint => ({
  id,
  mark: `423 ${id}`,
  type: "butt",
  role,
  pressureBearing: true,
  parts: joined,
  thicknesses: joined.map(() => "8.0 mm"),
  depositedThickness: "8.0 mm",
  outsideDiameter: "1200 mm",
  length,
  detail: "ss nb",
  processes: ["135"],
  positions: ["PA"],
  weldingProcedure: "WPS-03@2",
  drawing: "DRG-02@B",
  weldCoefficient: "0.85",
  qualityLevel: "C",
  requiredTests: [
    { method: "VT", extent: "100 %", basis: "EN 13445-5, all welds (from memory)" },
    { method: "RT", extent: "10 %", basis: contract },
  ],
  postWeldHeatTreatment: false,
});

/** A yoke finds no room round these nozzles. */
const smallBore = ["N04", "N05"];

const branch = (
  id: string,
  shell: string,
  nozzle: string,
  thickness: string,
  diameter: string,
  length: string,
): Joint => ({
  id,
  mark: `423 ${id}`,
  type: "branch",
  role: "nozzle",
  pressureBearing: true,
  parts: [shell, nozzle],
  thicknesses: ["8.0 mm", thickness],
  depositedThickness: "8.0 mm",
  outsideDiameter: diameter,
  length,
  detail: "ss nb",
  processes: [id === "N06" ? "135" : "141"],
  positions: ["PA"],
  weldingProcedure: id === "N06" ? "WPS-04@1" : "WPS-05@1",
  drawing: "DRG-02@B",
  qualityLevel: "C",
  requiredTests: [
    { method: "VT", extent: "100 %", basis: "EN 13445-5, all welds (from memory)" },
    { method: smallBore.includes(id) ? "PT" : "MT", extent: "25 %", basis: contract },
  ],
  postWeldHeatTreatment: false,
});

export const joints: readonly Joint[] = [
  seam("L1", "longitudinal", ["P01"], "1125 mm"),
  seam("L2", "longitudinal", ["P02"], "1125 mm"),
  seam("C1", "circumferential", ["P03", "P01"], "3745 mm"),
  seam("C2", "circumferential", ["P01", "P02"], "3745 mm"),
  seam("C3", "circumferential", ["P02", "P04"], "3745 mm"),
  branch("N01", "P01", "P05", "8.0 mm", "88.9 mm", "279 mm"),
  branch("N02", "P02", "P06", "8.0 mm", "88.9 mm", "279 mm"),
  branch("N03", "P02", "P07", "7.1 mm", "60.3 mm", "189 mm"),
  branch("N04", "P01", "P08", "4.5 mm", "33.7 mm", "106 mm"),
  branch("N05", "P02", "P09", "4.5 mm", "33.7 mm", "106 mm"),
  branch("N06", "P01", "P10", "12.5 mm", "323.9 mm", "1018 mm"),
];

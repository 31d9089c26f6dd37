import type { Book, Equipment, Joint, Part } from "../../generated/records.ts";
import { branch, course, end, measuredOn, pipeNozzle, seam } from "../../order/making/parts.ts";

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
  shelves: [
    { name: "shop", folder: "../../shop/shelf", holds: "what Tarnequill Boiler Works keeps for all its orders" },
    { name: "order", folder: "../../order/shelf", holds: "what the vessels of order PW-1187 share" },
  ],
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
  pressureCycles: 250,
  requiredFlow: "1800 kg/h",
  requiredFlowSource: "compressor K-311, delivery at 11 bar as on its plate",
  emptyMass: "838 kg",
};

const details = "DRG-03@B";

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

const diameters = { insideDiameter: "1184 mm", outsideDiameter: "1200 mm" };
const courseSizes = { ...diameters, length: "1125 mm" };
const endSizes = { ...diameters, length: "348 mm", crownRadius: "960 mm", knuckleRadius: "185 mm" };

export const parts: readonly Part[] = [
  measuredOn("DIM-02", course("P01", "shell course 1", courseSizes, ["8.1 mm", "8.0 mm", "8.1 mm", "8.2 mm"])),
  measuredOn("DIM-02", course("P02", "shell course 2", courseSizes, ["8.2 mm", "8.1 mm", "8.1 mm", "8.0 mm"])),
  measuredOn(
    "DIM-01",
    end("P03", "end 1, left", endSizes, ["7.9 mm", "7.6 mm", "7.4 mm", "7.6 mm", "7.5 mm", "8.0 mm"]),
  ),
  measuredOn(
    "DIM-01",
    end("P04", "end 2, right", endSizes, ["8.0 mm", "7.5 mm", "7.3 mm", "7.6 mm", "7.6 mm", "7.9 mm"]),
  ),
  forged("P05", "nozzle N1, inlet DN 80, long welding neck", "flange", neck("8.0 mm", "88.9 mm", "180 mm")),
  forged("P06", "nozzle N2, outlet DN 80, long welding neck", "flange", neck("8.0 mm", "88.9 mm", "180 mm")),
  forged("P07", "nozzle N3, safety valve DN 50, long welding neck", "flange", neck("7.1 mm", "60.3 mm", "160 mm")),
  pipeNozzle("P08", "nozzle N4, drain, threaded R 1", details, "120 mm"),
  pipeNozzle("P09", "nozzle N5, pressure gauge, threaded R 1", details, "120 mm"),
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

const welded = { stamp: "423", outsideDiameter: "1200 mm", procedure: "WPS-03@2" };

export const joints: readonly Joint[] = [
  seam(welded, "L1", "longitudinal", ["P01"], "1125 mm"),
  seam(welded, "L2", "longitudinal", ["P02"], "1125 mm"),
  seam(welded, "C1", "circumferential", ["P03", "P01"], "3745 mm", [["L1", "240 mm"]]),
  seam(welded, "C2", "circumferential", ["P01", "P02"], "3745 mm", [
    ["L1", "240 mm"],
    ["L2", "360 mm"],
  ]),
  seam(welded, "C3", "circumferential", ["P02", "P04"], "3745 mm", [["L2", "360 mm"]]),
  branch(welded.stamp, "N01", "P01", "P05", "8.0 mm", "88.9 mm", "279 mm"),
  branch(welded.stamp, "N02", "P02", "P06", "8.0 mm", "88.9 mm", "279 mm"),
  branch(welded.stamp, "N03", "P02", "P07", "7.1 mm", "60.3 mm", "189 mm"),
  branch(welded.stamp, "N04", "P01", "P08", "4.5 mm", "33.7 mm", "106 mm"),
  branch(welded.stamp, "N05", "P02", "P09", "4.5 mm", "33.7 mm", "106 mm"),
  branch(welded.stamp, "N06", "P01", "P10", "12.5 mm", "323.9 mm", "1018 mm"),
];

import type { WelderQualification } from "../../../src/generated/records.ts";

type Qualification = WelderQualification;
type Printed = NonNullable<Qualification["range"]>;
type Confirmed = readonly (readonly [day: string, evidence: string])[];

const approval = { examiner: "E. Cairnhollow", body: "PENQUILLITH", thirdPartyApproval: true, route: "9.3b" } as const;

/** Number, test and end of a certificate, with the half-yearly confirmations that keep it alive. */
interface Paper {
  readonly certificate: string;
  readonly tested: string;
  readonly ends: string;
  readonly confirmed: Confirmed;
}

const held = (
  id: string,
  person: string,
  own: Partial<Qualification>,
  { certificate, tested, ends, confirmed }: Paper,
): Qualification => ({
  id,
  person,
  certificate,
  standard: { standard: "EN ISO 9606-1", edition: "2017" },
  fillerGroup: "FM1",
  fillerType: "S",
  supplementaryFillet: false,
  ...own,
  testDate: tested,
  ...approval,
  validTo: ends,
  confirmations: confirmed.map(([date, evidence]) => ({ date, by: "M1", evidence })),
});

const paper = (certificate: string, tested: string, ends: string, ...confirmed: Confirmed): Paper => ({
  certificate,
  tested,
  ends,
  confirmed,
});

const butt = { weldTypes: ["butt"], fillerGroups: ["FM1", "FM2"] } satisfies Printed;
const details: NonNullable<Printed["details"]> = ["ss nb", "ss mb", "ss gb", "ss fb", "bs"];
const round: NonNullable<Printed["positions"]> = ["PA", "PC", "PE", "PF", "PH", "H-L045"];

/** MAG on plate, 12 mm deposited or more: no upper end of thickness. */
const plate = (size: string): Partial<Qualification> => ({
  designation: `EN ISO 9606-1 135 P BW FM1 S s${Number.parseFloat(size)} PA ss nb`,
  process: "135",
  transferMode: "spray",
  product: "plate",
  weldType: "butt",
  thickness: size,
  positions: ["PA"],
  detail: "ss nb",
  range: {
    ...butt,
    processes: ["135", "138"],
    products: ["plate", "pipe"],
    thickness: { minimum: "3.0 mm" },
    outsideDiameter: { minimum: "75 mm" },
    positions: ["PA"],
    details,
  },
});

/** Round a pipe in all positions but downwards. */
const pipe = (
  process: "135" | "141",
  size: string,
  diameter: string,
  outsideDiameter: NonNullable<Printed["outsideDiameter"]>,
): Partial<Qualification> => ({
  designation: `EN ISO 9606-1 ${process} T BW FM1 S s${Number.parseFloat(size)} D${Number.parseFloat(diameter)} H-L045 ss nb`,
  process,
  ...(process === "135" && { transferMode: "dip" }),
  product: "pipe",
  weldType: "butt",
  thickness: size,
  outsideDiameter: diameter,
  positions: ["H-L045"],
  detail: "ss nb",
  range: {
    ...butt,
    processes: process === "135" ? ["135", "138"] : ["141", "142", "143", "145"],
    products: Number.parseFloat(diameter) > 25 ? ["plate", "pipe"] : ["pipe"],
    thickness: { minimum: "3.0 mm", maximum: `${(2 * Number.parseFloat(size)).toFixed(1)} mm` },
    outsideDiameter,
    positions: round,
    details,
  },
});

const fillet = (size: string): Partial<Qualification> => ({
  designation: `EN ISO 9606-1 135 P FW FM1 S t${Number.parseFloat(size)} PB ml`,
  process: "135",
  transferMode: "spray",
  product: "plate",
  weldType: "fillet",
  thickness: size,
  positions: ["PB"],
  detail: "ml",
  range: {
    processes: ["135", "138"],
    products: ["plate", "pipe"],
    weldTypes: ["fillet"],
    fillerGroups: ["FM1", "FM2"],
    thickness: { minimum: "3.0 mm" },
    outsideDiameter: { minimum: "75 mm" },
    positions: ["PA", "PB"],
    details: ["sl", "ml"],
  },
});

const operator: Partial<Qualification> = {
  standard: { standard: "EN ISO 14732", edition: "2013" },
  designation: "EN ISO 14732 121 mechanised, tractor with seam tracking by eye",
  process: "121",
  product: "plate",
  weldType: "butt",
  thickness: "14.0 mm",
  positions: ["PA"],
  detail: "bs",
  range: { processes: ["121"] },
};

/** Stay tubes in a tube plate: a test piece of its own, as no butt or fillet weld stands for it. */
const tubesInPlate: Partial<Qualification> = {
  standard: { standard: "EN ISO 15614-8", edition: "2016" },
  designation: "tubes in tube plate, test piece as EN ISO 15614-8, 141 T FM1 S t6.3 D51 PH ml",
  process: "141",
  product: "pipe",
  weldType: "tube-to-tube-plate",
  thickness: "6.3 mm",
  outsideDiameter: "51.0 mm",
  positions: ["PH"],
  detail: "ml",
  range: {
    processes: ["141"],
    products: ["pipe"],
    weldTypes: ["tube-to-tube-plate"],
    fillerGroups: ["FM1", "FM2"],
    thickness: { minimum: "5.0 mm", maximum: "8.0 mm" },
    outsideDiameter: { minimum: "44.5 mm", maximum: "57.0 mm" },
    positions: ["PH"],
    details: ["ml"],
  },
};

const tube60 = pipe("141", "6.3 mm", "60.3 mm", { minimum: "30.2 mm" });
const tube21 = pipe("141", "6.3 mm", "21.3 mm", { minimum: "21.3 mm", maximum: "42.6 mm" });
const tube114 = pipe("135", "11.0 mm", "114.3 mm", { minimum: "57.2 mm" });

/** Who may weld what, on every day of the order; nobody welds outside of these. */
export const welderQualifications: readonly Qualification[] = [
  held(
    "WQ-03-1",
    "W03",
    plate("15.0 mm"),
    paper(
      "PQ-W-20655",
      "2025-02-18",
      "2027-02-17",
      ["2025-08-14", "job TQ405, joint E2"],
      ["2026-02-10", "job TQ414, joint K3"],
    ),
  ),
  held(
    "WQ-03-2",
    "W03",
    tube60,
    paper("PQ-W-20808", "2025-09-16", "2027-09-15", ["2026-02-27", "job TQ415, joint N05"]),
  ),
  held(
    "WQ-07-1",
    "W07",
    tube114,
    paper(
      "PQ-W-20662",
      "2025-03-11",
      "2027-03-10",
      ["2025-09-04", "job TQ407, joint N02"],
      ["2026-02-26", "job TQ415, joint N01"],
    ),
  ),
  held("WQ-07-2", "W07", tube60, paper("PQ-W-20823", "2025-10-14", "2027-10-13", ["2026-04-09", "joint N07"])),
  held("WQ-07-3", "W07", tube21, paper("PQ-W-20824", "2025-10-15", "2027-10-14", ["2026-04-09", "joint N08"])),
  held(
    "WQ-12-1",
    "W12",
    plate("12.0 mm"),
    paper("PQ-W-20711", "2025-05-27", "2027-05-26", ["2025-11-20", "job TQ409, joint K1"], ["2026-05-13", "joint E2"]),
  ),
  held(
    "WQ-12-2",
    "W12",
    fillet("12.0 mm"),
    paper(
      "PQ-W-20712",
      "2025-05-28",
      "2027-05-27",
      ["2025-11-20", "job TQ409, joint S12"],
      ["2026-05-13", "job TQ421, joint A1"],
    ),
  ),
  held(
    "WQ-15-1",
    "W15",
    operator,
    paper(
      "PQ-O-0318",
      "2024-11-12",
      "2027-11-11",
      ["2025-05-06", "job TQ402, joint L1"],
      ["2025-10-30", "job TQ410, joint C2"],
      ["2026-04-22", "joint FC2"],
    ),
  ),
  held(
    "WQ-19-1",
    "W19",
    fillet("10.0 mm"),
    paper("PQ-W-20840", "2025-11-04", "2027-11-03", ["2026-04-28", "joint S31"]),
  ),
  held(
    "WQ-19-2",
    "W19",
    plate("12.0 mm"),
    paper("PQ-W-20841", "2025-11-05", "2027-11-04", ["2026-04-28", "job TQ419, joint K2"]),
  ),
  held("WQ-19-3", "W19", tube60, paper("PQ-W-20842", "2025-11-06", "2027-11-05", ["2026-04-28", "joint F02"])),
  held("WQ-19-4", "W19", tube21, paper("PQ-W-20843", "2025-11-06", "2027-11-05", ["2026-04-28", "joint F08"])),
  held(
    "WQ-19-5",
    "W19",
    tubesInPlate,
    paper("PQ-W-20851", "2025-11-12", "2027-11-11", ["2026-04-28", "tube ends TE-08"]),
  ),
];

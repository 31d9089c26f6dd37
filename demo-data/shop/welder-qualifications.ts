import type { WelderQualification } from "../generated/records.ts";

type Qualification = WelderQualification;
type Printed = NonNullable<Qualification["range"]>;

const butt = { weldTypes: ["butt"], fillerGroups: ["FM1", "FM2"] } satisfies Printed;
const details: NonNullable<Printed["details"]> = ["ss nb", "ss mb", "ss gb", "ss fb", "bs"];
const mag: NonNullable<Printed["processes"]> = ["135", "138"];
const tig: NonNullable<Printed["processes"]> = ["141", "142", "143", "145"];
const round: NonNullable<Printed["positions"]> = ["PA", "PC", "PE", "PF", "PH", "H-L045"];

/** Range of the deposited thickness: from 12 mm on it has no upper end. */
const covered = (size: string): NonNullable<Printed["thickness"]> => {
  const deposited = Number.parseFloat(size);
  return { minimum: "3.0 mm", ...(deposited < 12 && { maximum: `${(2 * deposited).toFixed(1)} mm` }) };
};

/** On plate: flat by MAG, upwards by TIG. */
const plate = (process: "135" | "141", size: string): Partial<Qualification> => {
  const flat = process === "135";
  return {
    designation: `EN ISO 9606-1 ${process} P BW FM1 S s${Number.parseFloat(size)} ${flat ? "PA" : "PF"} ss nb`,
    process,
    ...(flat && { transferModes: ["dip", "spray"] }),
    product: "plate",
    weldType: "butt",
    thickness: size,
    positions: [flat ? "PA" : "PF"],
    detail: "ss nb",
    range: {
      ...butt,
      processes: flat ? mag : tig,
      products: ["plate", "pipe"],
      thickness: covered(size),
      outsideDiameter: { minimum: flat ? "75 mm" : "500 mm" },
      positions: flat ? ["PA"] : ["PA", "PF"],
      details,
    },
  };
};

/** Round a pipe in all positions but downwards. */
const pipe = (
  process: "135" | "141",
  size: string,
  diameter: string,
  outsideDiameter: NonNullable<Printed["outsideDiameter"]>,
): Partial<Qualification> => ({
  designation: `EN ISO 9606-1 ${process} T BW FM1 S s${Number.parseFloat(size)} D${Number.parseFloat(diameter)} H-L045 ss nb`,
  process,
  ...(process === "135" && { transferModes: ["dip"] }),
  product: "pipe",
  weldType: "butt",
  thickness: size,
  outsideDiameter: diameter,
  positions: ["H-L045"],
  detail: "ss nb",
  range: {
    ...butt,
    processes: process === "135" ? mag : tig,
    products: Number.parseFloat(diameter) > 25 ? ["plate", "pipe"] : ["pipe"],
    thickness: covered(size),
    outsideDiameter,
    positions: round,
    details,
  },
});

const fillet = (size: string): Partial<Qualification> => ({
  designation: `EN ISO 9606-1 135 P FW FM1 S t${Number.parseFloat(size)} PB ml`,
  process: "135",
  transferModes: ["spray"],
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
const tube168 = pipe("135", "8.0 mm", "168.3 mm", { minimum: "84.2 mm" });

/** A certificate with its number, test and end, and the half-yearly confirmations that keep it alive: day, job and weld. */
const held = (
  id: string,
  own: Partial<Qualification>,
  certificate: string,
  testDate: string,
  validTo: string,
  ...confirmed: readonly (readonly [day: string, evidence: string])[]
): Qualification => ({
  id,
  person: `W${id.slice(3, 5)}`,
  certificate,
  standard: { standard: "EN ISO 9606-1", edition: "2017" },
  fillerGroup: "FM1",
  fillerType: "S",
  supplementaryFillet: false,
  ...own,
  testDate,
  examiner: "E. Cairnhollow",
  body: "PENQUILLITH",
  thirdPartyApproval: true,
  route: "9.3b",
  validTo,
  confirmations: confirmed.map(([date, evidence]) => ({ date, by: "M1", evidence: `job ${evidence}` })),
});

/** Who of the shop may weld what, and until when. A book has the certificates its welds rest on. */
const certificates: readonly Qualification[] = [
  held(
    "WQ-03-1",
    plate("135", "8.0 mm"),
    "PQ-W-20714",
    "2025-06-10",
    "2027-06-09",
    ["2025-11-28", "TQ409, joint L2"],
    ["2026-05-20", "TQ418, joint C1"],
  ),
  held(
    "WQ-03-2",
    tube168,
    "PQ-W-20715",
    "2025-06-11",
    "2027-06-10",
    ["2025-11-28", "TQ409, joint N08"],
    ["2026-05-20", "TQ418, joint N02"],
  ),
  held("WQ-03-3", tube60, "PQ-W-20808", "2025-09-16", "2027-09-15", ["2026-02-27", "TQ415, joint N05"]),
  held(
    "WQ-03-4",
    plate("135", "15.0 mm"),
    "PQ-W-20655",
    "2025-02-18",
    "2027-02-17",
    ["2025-08-14", "TQ405, joint E2"],
    ["2026-02-10", "TQ414, joint K3"],
  ),
  held(
    "WQ-07-1",
    plate("135", "8.0 mm"),
    "PQ-W-20698",
    "2025-05-06",
    "2027-05-05",
    ["2025-10-30", "TQ408, joint C3"],
    ["2026-04-22", "TQ417, joint M01"],
  ),
  held("WQ-07-2", plate("141", "6.0 mm"), "PQ-W-20821", "2025-10-08", "2027-10-07", [
    "2026-04-02",
    "TQ416, repair C1R1",
  ]),
  held(
    "WQ-07-3",
    tube114,
    "PQ-W-20662",
    "2025-03-11",
    "2027-03-10",
    ["2025-09-04", "TQ407, joint N02"],
    ["2026-02-26", "TQ415, joint N01"],
  ),
  held("WQ-07-4", tube60, "PQ-W-20823", "2025-10-14", "2027-10-13", ["2026-04-09", "TQ417, joint N07"]),
  held("WQ-07-5", tube21, "PQ-W-20824", "2025-10-15", "2027-10-14", ["2026-04-09", "TQ417, joint N08"]),
  held(
    "WQ-12-1",
    plate("135", "12.0 mm"),
    "PQ-W-20711",
    "2025-05-27",
    "2027-05-26",
    ["2025-11-20", "TQ409, joint K1"],
    ["2026-05-13", "TQ417, joint E2"],
  ),
  held(
    "WQ-12-2",
    fillet("12.0 mm"),
    "PQ-W-20712",
    "2025-05-28",
    "2027-05-27",
    ["2025-11-20", "TQ409, joint S12"],
    ["2026-05-13", "TQ421, joint A1"],
  ),
  held(
    "WQ-15-1",
    operator,
    "PQ-O-0318",
    "2024-11-12",
    "2027-11-11",
    ["2025-05-06", "TQ402, joint L1"],
    ["2025-10-30", "TQ410, joint C2"],
    ["2026-04-22", "TQ417, joint FC2"],
  ),
  held("WQ-19-1", fillet("10.0 mm"), "PQ-W-20840", "2025-11-04", "2027-11-03", ["2026-04-28", "TQ417, joint S31"]),
  held("WQ-19-2", plate("135", "12.0 mm"), "PQ-W-20841", "2025-11-05", "2027-11-04", ["2026-04-28", "TQ419, joint K2"]),
  held("WQ-19-3", tube60, "PQ-W-20842", "2025-11-06", "2027-11-05", ["2026-04-28", "TQ417, joint F02"]),
  held("WQ-19-4", tube21, "PQ-W-20843", "2025-11-06", "2027-11-05", ["2026-04-28", "TQ417, joint F08"]),
  held("WQ-19-5", tubesInPlate, "PQ-W-20851", "2025-11-12", "2027-11-11", ["2026-04-28", "TQ417, tube ends TE-08"]),
];

/** Certificates by their ids; throws when the shop has no such certificate. */
export const welderQualificationsOf = (ids: string): readonly Qualification[] =>
  ids.split(" ").map((id) => {
    const found = certificates.find((one) => one.id === id);
    if (found === undefined) throw new Error(`the shop holds no welder's certificate ${id}`);
    return found;
  });

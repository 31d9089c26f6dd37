import type { ProcedureQualification } from "../../generated/records.ts";

type Test = NonNullable<ProcedureQualification["tests"]>[number];
type Own = Omit<ProcedureQualification, "id" | "certificate" | "testDate" | "approved" | "tests">;

/** Certificate of the body, day the test piece was welded, day it was approved. */
export type Approval = readonly [certificate: string, tested: string, approved: string];

const passed = (test: string, type: NonNullable<Test["type"]>, requirement: string, ...value: string[]): Test => ({
  test,
  type,
  requirement,
  ...(value.length > 0 && { value }),
  result: "accepted",
});

const cold = (test: Test): Test => ({ ...test, temperature: "-20 °C" });

const steel = {
  materialGroup: "1.1",
  grade: "P265GH",
  preheat: "10 °C",
  postWeldHeatTreatment: false,
  hardnessTested: false,
  approvedBy: "PENQUILLITH",
} satisfies Own;
const common = {
  standard: { standard: "EN ISO 15614-1", edition: "2017" },
  level: "2",
  ...steel,
} satisfies Own;

/** Readings of the two tensile bars, and of the impact bars where they were made. */
interface Readings {
  readonly tensile: readonly [string, string];
  readonly impact?: readonly [string, string, string];
  /** Of the heat affected zone. */
  readonly zone?: readonly [string, string, string];
}

/** A butt weld: seen, tested on and below its surface, pulled, bent and etched. */
export function butt(
  id: string,
  [certificate, testDate, approved]: Approval,
  { tensile, impact, zone = impact }: Readings,
  own: Own,
): ProcedureQualification {
  return {
    id,
    certificate,
    ...common,
    jointType: "butt",
    layers: "multi",
    impactTested: impact !== undefined,
    ...own,
    testDate,
    approved,
    tests: [
      passed("1", "visual", "100 %"),
      passed("2", "surface", "magnetic particles, 100 %"),
      passed("3", "volumetric", "radiography, 100 %"),
      passed("4", "tensile", "at least 410 MPa", ...tensile),
      passed("5", "bend", "four bars, 180°"),
      passed("6", "macro", "no crack, full penetration"),
      ...(impact === undefined ? [] : [cold(passed("7", "impact", "weld metal, at least 27 J", ...impact))]),
      ...(zone === undefined ? [] : [cold(passed("8", "impact", "heat affected zone, at least 27 J", ...zone))]),
    ],
  };
}

/** A fillet weld on plates: seen, tested on its surface, etched twice. */
export function fillet(
  id: string,
  [certificate, testDate, approved]: Approval,
  own: Omit<Own, "jointType" | "product" | "impactTested">,
): ProcedureQualification {
  return {
    id,
    certificate,
    ...common,
    jointType: "fillet",
    product: "plate",
    impactTested: false,
    ...own,
    testDate,
    approved,
    tests: [
      passed("1", "visual", "100 %"),
      passed("2", "surface", "magnetic particles, 100 %"),
      passed("3", "macro", "two sections, no crack, fused to the root"),
    ],
  };
}

/** Tubes in a tube plate, expanded as in production: seen, tested on the surface, etched at several places. */
export function tubesInPlate(
  id: string,
  [certificate, testDate, approved]: Approval,
  own: Omit<Own, "jointType" | "product" | "impactTested" | "standard" | "expanded">,
): ProcedureQualification {
  return {
    id,
    certificate,
    standard: { standard: "EN ISO 15614-8", edition: "2016" },
    ...steel,
    jointType: "tube-to-tube-plate",
    product: "pipe",
    expanded: true,
    impactTested: false,
    ...own,
    testDate,
    approved,
    tests: [
      passed("1", "visual", "ten tubes, 100 %"),
      passed("2", "surface", "penetrant, 100 %"),
      passed("3", "macro", "four sections, throat at least the wall of the tube, no crack"),
    ],
  };
}

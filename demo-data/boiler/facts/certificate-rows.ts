import { ladle, surface, tensile, type Row } from "../../order/facts/certificate-rows.ts";
import { parts } from "./parts.ts";

type Material = Pick<Row, "standard" | "edition" | "grade" | "form">;

/** Standard, edition, grade and form as a part asks for them: the material was bought as ordered. */
export function orderedFor(part: string): Material {
  const material = parts.find(({ id }) => id === part)?.material;
  if (material?.form === undefined) throw new Error(`the facts know no material of part ${part}`);
  const { standard, edition, grade, form } = material;
  return {
    ...(standard !== undefined && { standard }),
    ...(edition !== undefined && { edition }),
    ...(grade !== undefined && { grade }),
    form,
  };
}

const normalised = "+N";

interface Plate {
  readonly heat: string;
  readonly unit: string;
  readonly part: string;
  /** Thickness, width, length in mm, mass in kg. */
  readonly size: readonly [thickness: string, width: number, length: number, mass: number];
  readonly chemistry: string;
  readonly sum: string;
  readonly ce: string;
  /** Yield and tensile strength in MPa, elongation in per cent. */
  readonly pull: string;
  /** Notched bars at -20 °C in J: the mean, and the three values. */
  readonly bars: string;
}

export const plate = ({ heat, unit, part, size, chemistry, sum, ce, pull, bars }: Plate): Row => {
  const [thickness, width, length, mass] = size;
  const [mean = "", ...values] = bars.split(" ");
  return {
    heat,
    testUnit: unit,
    pieces: 1,
    ...orderedFor(part),
    deliveryCondition: normalised,
    thickness,
    width: `${width} mm`,
    length: `${length} mm`,
    mass: `${mass} kg`,
    meltingProcess: "basic oxygen, fully killed",
    chemistry: ladle(chemistry),
    sumCrCuMoNi: sum,
    carbonEquivalent: ce,
    tensile: tensile(unit, "transverse", pull),
    impact: [
      {
        test: unit,
        direction: "transverse",
        temperature: "-20 °C",
        specimenWidth: "10 mm",
        values: values.map((value) => `${value} J`),
        mean: `${mean} J`,
      },
    ],
    otherTests: surface,
  };
};

interface Long {
  readonly heat: string;
  readonly part: string;
  readonly pieces: number;
  readonly thickness: string;
  readonly diameter: string;
  readonly length: number;
  readonly mass: number;
  readonly chemistry: string;
  readonly ce?: string;
  readonly pull: string;
}

const long = ({ heat, part, pieces, thickness, diameter, length, mass, chemistry, ce, pull }: Long): Row => ({
  heat,
  testUnit: `${heat}/1`,
  pieces,
  ...orderedFor(part),
  deliveryCondition: normalised,
  thickness,
  diameter,
  length: `${length} mm`,
  mass: `${mass} kg`,
  meltingProcess: "electric, fully killed",
  chemistry: ladle(chemistry),
  ...(ce !== undefined && { carbonEquivalent: ce }),
  tensile: tensile(`${heat}/1`, "longitudinal", pull),
});

/** Tubes of one heat: every one tested for tightness, some flattened or expanded. */
export const tubes = (one: Long): Row => ({
  ...long(one),
  otherTests: [
    { test: "tightness, eddy current", requirement: "EN ISO 10893-1", result: "accepted" },
    Number.parseFloat(one.diameter) > 150
      ? { test: "ring tensile", requirement: "EN ISO 8496", result: "accepted" }
      : { test: "flattening", requirement: "EN ISO 8492", result: "accepted" },
    ...(one.part === "P12" || one.part === "P14"
      ? [{ test: "drift expanding", requirement: "EN ISO 8493", result: "accepted" } as const]
      : []),
    ...surface,
  ],
});

export const bars = (one: Long): Row => ({ ...long(one), otherTests: surface });

/** What a works reports of steel for attachments: results of its usual production, without a test of the piece. */
export const attachment = (
  part: string,
  heat: string,
  thickness: string,
  mass: number,
  chemistry: string,
  pull: string,
): Row => ({
  heat,
  pieces: 1,
  ...orderedFor(part),
  deliveryCondition: "+AR",
  thickness,
  mass: `${mass} kg`,
  chemistry: ladle(chemistry),
  tensile: tensile(`${heat}, usual production`, "transverse", pull),
});

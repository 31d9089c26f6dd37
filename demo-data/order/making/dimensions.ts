import type { DimensionCheck } from "../../generated/records.ts";

type Row = NonNullable<DimensionCheck["rows"]>[number];

export const signed = (date: string): NonNullable<DimensionCheck["signatures"]> => [
  { role: "quality control", person: "D2", date },
];
const mm = (values: readonly number[]): string[] => values.map((value) => `${value} mm`);

/** Inside diameters at one edge of a course: within 1 % of each other about the nominal. */
export const roundnessOf =
  (nominal: string, minimum: string, maximum: string) =>
  (feature: string, part: string, diameters: readonly number[]): Row => ({
    feature,
    part,
    shape: "diameters of one section",
    nominal,
    minimum,
    maximum,
    measured: mm(diameters),
    result: "accepted",
  });

export const thickness = (part: string, place: string, values: readonly number[]): Row => ({
  feature: `${place}, ${part}`,
  part,
  nominal: "8.0 mm",
  minimum: "7.0 mm",
  measured: values.map((value) => `${value.toFixed(1)} mm`),
  result: "accepted",
});

export const between = (
  feature: string,
  nominal: number,
  tolerance: number,
  measured: number,
  of: Partial<Row> = {},
): Row => ({
  feature,
  ...of,
  nominal: `${nominal} mm`,
  minimum: `${nominal - tolerance} mm`,
  maximum: `${nominal + tolerance} mm`,
  measured: [`${measured} mm`],
  result: "accepted",
});

export const atMost = (feature: string, joint: string, maximum: string, measured: string): Row => ({
  feature,
  joint,
  maximum,
  measured: [measured],
  result: "accepted",
});

export const place = (feature: string, part: string, nominal: number, measured: number): Row =>
  between(feature, nominal, 3, measured, { part });

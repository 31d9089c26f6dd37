import type { MaterialCertificate } from "../../generated/records.ts";

export type Row = NonNullable<MaterialCertificate["rows"]>[number];
type Analysis = NonNullable<Row["chemistry"]>;

const elements = ["C", "Si", "Mn", "P", "S", "N", "Al", "Cr", "Cu", "Mo", "Ni", "Nb", "Ti", "V"] as const;

/** Ladle analysis in per cent, in the order of the columns every mill here prints; "-" where a mill prints none. */
export function ladle(line: string): Analysis {
  const values = line.split(" ");
  return elements.flatMap((element, index) => {
    const value = values[index];
    return value === undefined || value === "-" ? [] : [{ element, value: `${value} %` }];
  });
}

export const tensile = (
  test: string,
  direction: "longitudinal" | "transverse",
  line: string,
): NonNullable<Row["tensile"]> => {
  const [yieldStrength = "", tensileStrength = "", elongation = ""] = line.split(" ");
  return [
    {
      test,
      direction,
      temperature: "20 °C",
      yieldKind: "ReH",
      yieldStrength: `${yieldStrength} MPa`,
      tensileStrength: `${tensileStrength} MPa`,
      elongation: `${elongation} %`,
      gaugeLength: "5.65·√S0",
    },
  ];
};

const impact = (
  test: string,
  direction: "longitudinal" | "transverse",
  temperature: string,
  specimenWidth: string,
  line: string,
): NonNullable<Row["impact"]> => {
  const [mean = "", ...values] = line.split(" ");
  return [
    {
      test,
      direction,
      temperature,
      specimenWidth,
      values: values.map((value) => `${value} J`),
      mean: `${mean} J`,
    },
  ];
};

export const surface: NonNullable<Row["otherTests"]> = [
  { test: "surface and dimensions", requirement: "as ordered", result: "accepted" },
];
const plateSteel = { standard: "EN 10028-2", edition: "2017", grade: "P265GH", deliveryCondition: "+N" } as const;
const forgedSteel = {
  standard: "EN 10222-2",
  edition: "2017",
  grade: "P245GH",
  form: "forging",
  deliveryCondition: "+N",
} as const;

/** Ends of one heat, as their maker certifies them. */
export const formedEnd = (
  sizes: Pick<Row, "pieces" | "diameter" | "mass">,
  heat: string,
  unit: string,
  chemistry: string,
  ce: string,
  pull: string,
  bars: string,
): Row => ({
  heat,
  testUnit: unit,
  ...plateSteel,
  form: "formed-end",
  thickness: "8.0 mm",
  ...sizes,
  meltingProcess: "basic oxygen, fully killed",
  chemistry: ladle(chemistry),
  carbonEquivalent: ce,
  tensile: tensile(unit, "transverse", pull),
  impact: impact(unit, "transverse", "-20 °C", "7.5 mm", bars),
  otherTests: [
    ...surface,
    {
      test: "magnetic particle test of the knuckle, inside and outside",
      requirement: "no linear indication",
      result: "accepted",
    },
  ],
});

export const plate = (
  heat: string,
  unit: string,
  chemistry: string,
  sum: string,
  ce: string,
  pull: string,
  bars: string,
): Row => ({
  heat,
  testUnit: unit,
  pieces: 1,
  ...plateSteel,
  form: "plate",
  thickness: "8.0 mm",
  width: "1250 mm",
  length: "4000 mm",
  mass: "314 kg",
  meltingProcess: "basic oxygen, fully killed",
  chemistry: ladle(chemistry),
  sumCrCuMoNi: sum,
  carbonEquivalent: ce,
  tensile: tensile(unit, "transverse", pull),
  impact: impact(unit, "transverse", "-20 °C", "7.5 mm", bars),
  otherTests: surface,
});

interface Forging {
  readonly heat: string;
  readonly pieces: number;
  readonly thickness: string;
  readonly diameter: string;
  readonly mass: string;
  readonly chemistry: string;
  readonly pull: string;
  readonly bars: string;
}

export const forging = ({ heat, pieces, thickness, diameter, mass, chemistry, pull, bars }: Forging): Row => ({
  heat,
  testUnit: `${heat}/1`,
  pieces,
  ...forgedSteel,
  thickness,
  diameter,
  mass,
  meltingProcess: "electric, vacuum degassed",
  chemistry: ladle(chemistry),
  tensile: tensile(`${heat}/1`, "longitudinal", pull),
  impact: impact(`${heat}/1`, "longitudinal", "-10 °C", "10 mm", bars),
  otherTests: surface,
});

export const bolting = (
  heat: string,
  grade: string,
  deliveryCondition: string,
  mass: string,
  hardness: string,
): Row => ({
  heat,
  pieces: 12,
  standard: "EN 10269",
  edition: "2013",
  grade,
  form: "bolting",
  deliveryCondition,
  thickness: "24.0 mm",
  diameter: "24.0 mm",
  mass,
  hardness: [{ test: `${heat}/H`, value: hardness }],
  otherTests: [{ test: "thread gauges", requirement: "ISO metric, 6g and 6H", result: "accepted" }],
});

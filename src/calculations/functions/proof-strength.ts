import { ownChoice } from "../../model/basis.ts";
import type { ListFunction, ListResult } from "../../model/calculation.ts";
import { quantity } from "../../model/input.ts";
import { quantityIn, rowsThenNumbers, type Row } from "./arguments.ts";
import { short } from "../../model/print-number.ts";

/** What a point of the proof-strength table is read with. */
export const proofStrengthPoint = {
  temperature: quantity("temperature", "°C"),
  proofStrength: quantity("proofStrength", "MPa"),
} as const;

interface Point {
  readonly temperature: number;
  readonly strength: number;
}

/**
 * Named function `proofStrength(points, ReH, t)` in MPa: linear between the tabulated temperatures, the yield strength at
 * 20 °C being the first point. At and below 20 °C that yield strength; above the last point it is refused.
 */
export const proofStrength: ListFunction = {
  name: "proofStrength",
  means: "least 0.2 % proof strength at the calculation temperature, by linear interpolation",
  basis: ownChoice(
    "linear between tabulated temperatures and from the yield strength at 20 °C to the first of them; never extrapolated upwards",
  ),
  parameters: [
    { name: "points", unit: "rows" },
    { name: "ReH", unit: "MPa" },
    { name: "t", unit: "°C" },
  ],
  unit: "MPa",
  compute: rowsThenNumbers((rows, [yieldStrength = Number.NaN, t = Number.NaN]) =>
    interpolate([{ temperature: 20, strength: yieldStrength }, ...rows.map(pointOf)], t),
  ),
};

const pointOf = (row: Row): Point => ({
  temperature: quantityIn(row, "temperature").value,
  strength: quantityIn(row, "proofStrength").low,
});

function interpolate(points: readonly Point[], t: number): ListResult {
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined || points.length < 2)
    return { refused: "no proof strength is known at any temperature above 20 °C" };
  const disorder = points.find(
    (point, index) => index > 0 && point.temperature <= (points[index - 1]?.temperature ?? 0),
  );
  if (disorder !== undefined)
    return { refused: `the proof strengths are not in rising order of temperature at ${disorder.temperature} °C` };
  const bound = points.find(({ strength }) => !Number.isFinite(strength));
  if (bound !== undefined)
    return { refused: `the strength at ${bound.temperature} °C is stated as a bound without lower end` };
  if (t > last.temperature)
    return {
      refused: `the temperature ${short(t)} °C lies above ${last.temperature} °C, the last at which a proof strength is known`,
    };
  if (t <= first.temperature)
    return { value: first.strength, lines: [`at or below 20 °C: the yield strength at 20 °C, ${first.strength} MPa`] };
  const upper = points.findIndex((point) => t <= point.temperature);
  const [from, to] = [points[upper - 1] ?? first, points[upper] ?? last];
  if (t === to.temperature)
    return { value: to.strength, lines: [`as tabulated at ${short(t)} °C: ${to.strength} MPa`] };
  const share = (t - from.temperature) / (to.temperature - from.temperature);
  return {
    value: from.strength + share * (to.strength - from.strength),
    lines: [
      `linear between ${from.strength} MPa at ${from.temperature} °C and ${to.strength} MPa at ${to.temperature} °C`,
    ],
  };
}

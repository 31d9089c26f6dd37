import { list, optional, quantity, text, type Thing } from "../../model/input.ts";
import { exactly, type Measure } from "../../model/quantity.ts";

/** What a row of a weld log says of the metal it deposited. */
export const runOfLog = {
  layer: text("layer"),
  process: text("process"),
  side: optional(text("side")),
  welders: list(text("welders[]")),
  deposited: optional(quantity("depositedThickness", "mm")),
};
export type RunOfLog = Thing<typeof runOfLog>;

/** Sum of what runs deposited, as it would be written; undefined where there is none, or one does not state it. */
export function depositedIn(runs: readonly RunOfLog[]): Measure | undefined {
  const stated = runs.flatMap(({ deposited }) => deposited ?? []);
  if (stated.length === 0 || stated.length < runs.length) return undefined;
  const add = (of: (one: Measure) => number) => stated.reduce((sum, one) => sum + of(one), 0);
  const total = exactly(
    add(({ value }) => value),
    "mm",
  );
  const decimals = Math.max(...stated.map((one) => one.decimals));
  return {
    ...total,
    low: add(({ low }) => low),
    high: add(({ high }) => high),
    openLow: stated.some(({ openLow }) => openLow),
    openHigh: stated.some(({ openHigh }) => openHigh),
    halfUnit: add(({ halfUnit }) => halfUnit),
    decimals,
    text: `${total.value.toFixed(decimals)} mm`,
  };
}

/** What a welder deposited with one process on one side of a joint; undefined where one of these runs does not state it. */
export const depositedBy = (
  runs: readonly RunOfLog[],
  welder: string,
  process: string,
  side: string | undefined,
): Measure | undefined =>
  depositedIn(runs.filter((one) => one.process === process && one.side === side && one.welders.includes(welder)));

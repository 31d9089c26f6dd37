import { commonPractice } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { numbers } from "./arguments.ts";

/** Sizes of one expanded tube end as measured, in mm. */
export interface TubeEnd {
  /** Diameter of the hole. */
  readonly hole: number;
  /** Outside diameter of the tube before. */
  readonly outside: number;
  /** Inside diameter of the tube before. */
  readonly before: number;
  /** Inside diameter of the tube after rolling. */
  readonly after: number;
}

/** Why the sizes of a tube end contradict each other or show no joint; undefined when they do not. */
export function contradictionOf({ hole, outside, before, after }: TubeEnd): string | undefined {
  if (!(before > 0 && outside > before))
    return `a tube of ${outside} mm outside and ${before} mm inside diameter has no wall`;
  if (!(hole >= outside)) return `a tube of ${outside} mm does not pass through a hole of ${hole} mm`;
  const contact = before + hole - outside;
  if (!(after > contact * (1 - 1e-9)))
    return `rolled to ${after} mm the tube does not touch its hole, which it does from ${printed(contact)} mm on`;
  return after < hole ? undefined : `rolled to ${after} mm no wall is left in a hole of ${hole} mm`;
}

/** Apparent reduction of the wall in percent: what the bore grew by after contact with the hole, by twice the wall. */
export function wallReductionOf({ hole, outside, before, after }: TubeEnd): number {
  return (100 * (after - before - (hole - outside))) / (outside - before);
}

/** Named function `wallReduction(H, D, d0, d1)` in %: apparent reduction of the wall of one expanded tube end. */
export const wallReduction: ListFunction = {
  name: "wallReduction",
  means: "apparent reduction of the wall of an expanded tube: (d1 − d0 − (H − D))/(D − d0), from measured sizes",
  basis: commonPractice("reduction of the wall by rolling, from the sizes of hole, tube and bore as measured"),
  parameters: [
    { name: "H", unit: "mm" },
    { name: "D", unit: "mm" },
    { name: "d0", unit: "mm" },
    { name: "d1", unit: "mm" },
  ],
  unit: "%",
  compute: numbers(([hole = Number.NaN, outside = Number.NaN, before = Number.NaN, after = Number.NaN]) => {
    const end = { hole, outside, before, after };
    const refused = contradictionOf(end);
    if (refused !== undefined) return { refused };
    return {
      value: wallReductionOf(end),
      lines: [`the tube touches its hole from a bore of ${printed(before + hole - outside)} mm on`],
    };
  }),
};

const printed = (value: number) => String(Number(value.toPrecision(6)));

import { planOf } from "../../shop/plan.ts";
import { stepsBeforeWelding } from "./plan-before-welding.ts";
import { stepsFromWelding } from "./plan-from-welding.ts";

/** Steps start after these; every other step follows the one before it in the order of manufacture. */
export const after: Readonly<Record<number, readonly number[]>> = {
  20: [10],
  30: [20],
  40: [10],
  50: [10],
  60: [10],
  70: [10],
  80: [10],
  90: [10],
  100: [10],
  110: [10],
  120: [30, 90, 100],
  130: [40, 50, 60, 110, 120],
  140: [130],
  150: [70, 130],
  160: [140],
  170: [50, 60],
  180: [150],
  190: [180],
  200: [70, 170],
  210: [130],
  220: [160, 190, 200, 210],
  230: [80, 220],
  240: [230],
  250: [230],
  270: [240, 250],
  280: [270],
  285: [280],
  290: [285],
};

export const inspectionSteps = planOf([...stepsBeforeWelding, ...stepsFromWelding], after, "P1");

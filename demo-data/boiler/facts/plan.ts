import { planOf } from "../../shop/plan.ts";
import { stepsBeforeWelding } from "./plan-before-welding.ts";
import { stepsOfCompletion } from "./plan-completion.ts";
import { stepsOfWelding } from "./plan-welding.ts";

/** Steps that must be done before a step is. */
const after: Readonly<Record<number, readonly number[]>> = {
  20: [10],
  30: [10],
  40: [10],
  50: [20],
  55: [20],
  60: [10],
  110: [10],
  80: [10],
  90: [10],
  100: [10],
  120: [20, 30, 90],
  130: [20, 100],
  140: [40, 50, 55, 80, 110, 120],
  150: [80, 120],
  160: [40, 50, 55, 120],
  170: [60, 140],
  180: [130, 150, 160],
  190: [160],
  200: [130, 140],
  210: [170, 180, 190],
  220: [130, 210],
  230: [130, 210],
  240: [210],
  260: [200, 220, 240],
  270: [230, 260],
  280: [80, 270],
  290: [280],
  300: [280],
  310: [20],
  315: [280],
  330: [290, 300, 310, 315],
  340: [330],
  350: [340],
  355: [350],
  360: [355],
};

export const inspectionSteps = planOf([...stepsBeforeWelding, ...stepsOfWelding, ...stepsOfCompletion], after, "P2");

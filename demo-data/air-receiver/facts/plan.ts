import { stepsBeforeWelding } from "./plan-before-welding.ts";
import { stepsFromWelding } from "./plan-from-welding.ts";
import type { InspectionStep } from "../../../src/generated/records.ts";
import type { Step } from "./plan-step.ts";

type Point = NonNullable<InspectionStep["points"]>[number];

/** Steps start after these; every other step follows the one before it in the order of manufacture. */
const after: Readonly<Record<number, readonly number[]>> = {
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
  260: [230],
  270: [240, 250, 260],
  280: [270],
  290: [280],
};

const idOf = (step: number) => `ITP-${String(step).padStart(3, "0")}`;

function pointsOf({ by, done, body, client }: Step): Point[] {
  const attended = body === "hold" || body === "witness";
  return [
    { party: "maker", point: "perform", outcome: "attended", person: by, date: done },
    ...(body === undefined
      ? []
      : [
          {
            party: "inspection body",
            point: body,
            outcome: attended ? ("attended" as const) : ("reviewed" as const),
            person: "E1",
            date: done,
          } satisfies Point,
        ]),
    ...(client === undefined
      ? []
      : [
          {
            party: "client",
            point: client,
            outcome: client === "witness" ? ("attended" as const) : ("reviewed" as const),
            person: "P1",
            date: done,
          } satisfies Point,
        ]),
  ];
}

export const inspectionSteps: readonly InspectionStep[] = [...stepsBeforeWelding, ...stepsFromWelding].map((step) => ({
  id: idOf(step.step),
  step: step.step,
  phase: step.phase,
  activity: step.activity,
  criterion: step.criterion,
  ...(step.procedure !== undefined && { procedure: step.procedure }),
  ...(after[step.step] !== undefined && { predecessors: (after[step.step] ?? []).map(idOf) }),
  points: pointsOf(step),
  records: [...step.records],
  planned: step.done,
  ...(step.notice !== undefined && { notice: step.notice }),
  done: step.done,
}));

import type { InspectionStep } from "../../../src/generated/records.ts";
import { stepsBeforeWelding } from "./plan-before-welding.ts";
import { stepsOfCompletion } from "./plan-completion.ts";
import type { Step } from "./plan-steps.ts";
import { stepsOfWelding } from "./plan-welding.ts";

type Point = NonNullable<InspectionStep["points"]>[number];

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
  320: [280],
  330: [290, 300, 310, 315, 320],
  340: [330],
  350: [340],
  360: [350],
};

const idOf = (step: number) => `ITP-${String(step).padStart(3, "0")}`;

/** What the maker does, and what the inspection body and the client took part in, each signed on the day. */
function pointsOf({ by, done, body, client }: Step): Point[] {
  const taken = (party: "inspection body" | "client", point: Point["point"], person: string): Point => ({
    party,
    ...(point !== undefined && { point }),
    outcome: point === "hold" || point === "witness" ? "attended" : "reviewed",
    person,
    date: done,
  });
  return [
    { party: "maker", point: "perform", outcome: "attended", person: by, date: done },
    ...(body === undefined ? [] : [taken("inspection body", body, "E1")]),
    ...(client === undefined ? [] : [taken("client", client, "P2")]),
  ];
}

export const inspectionSteps: readonly InspectionStep[] = [
  ...stepsBeforeWelding,
  ...stepsOfWelding,
  ...stepsOfCompletion,
].map((step) => {
  const before = after[step.step] ?? [];
  return {
    id: idOf(step.step),
    step: step.step,
    phase: step.phase,
    activity: step.activity,
    criterion: step.criterion,
    ...(step.procedure !== undefined && { procedure: step.procedure }),
    ...(before.length > 0 && { predecessors: before.map(idOf) }),
    points: pointsOf(step),
    records: [...step.records],
    planned: step.done,
    ...(step.notice !== undefined && { notice: step.notice }),
    done: step.done,
  };
});

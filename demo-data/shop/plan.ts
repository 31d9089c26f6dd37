import type { InspectionStep } from "../generated/records.ts";

type Point = NonNullable<InspectionStep["points"]>[number];

/** A step of the inspection plan, before it is written as a record. */
export interface Step {
  readonly step: number;
  readonly phase: string;
  readonly activity: string;
  readonly criterion: string;
  readonly procedure?: string;
  /** Parts of the inspection body and of the client; the maker performs every step. */
  readonly body?: "hold" | "witness" | "review" | "approve";
  readonly client?: "witness" | "review";
  readonly by: string;
  readonly done: string;
  readonly notice?: string;
  readonly records: readonly string[];
}

/** Links to records of one kind. */
export const of = (kind: string, ids: string): string[] => ids.split(" ").map((id) => `${kind}:${id}`);

/** Steps that the maker's plans have in common, whatever is made. */
export const usualSteps = {
  orderReviewed: {
    phase: "Contract and design",
    activity: "Order reviewed, requirements fixed, this plan agreed",
    criterion: "nothing left open",
    body: "approve",
    client: "review",
    by: "D2",
  },
  designExamined: {
    phase: "Contract and design",
    activity: "Design data, drawings and calculations examined",
    criterion: "no open comment",
    body: "approve",
    client: "review",
    by: "R1",
  },
  weldingCovered: {
    phase: "Before manufacture",
    activity: "Welding procedures cover every joint of the weld map",
    criterion: "within the range of the qualification",
    body: "approve",
    client: "review",
    by: "M1",
  },
  instrumentsCalibrated: {
    phase: "Before manufacture",
    activity: "Measuring equipment calibrated",
    criterion: "in force for the planned use",
    by: "D2",
  },
  consumablesReceived: {
    phase: "Materials",
    activity: "Welding consumables received and stored",
    criterion: "class of the welding procedure, certificate",
    by: "M1",
  },
} as const satisfies Readonly<Record<string, Partial<Step>>>;

const idOf = (step: number) => `ITP-${String(step).padStart(3, "0")}`;

/** What the maker does, and what the inspection body and the client took part in, each signed on the day. */
function pointsOf({ by, done, body, client }: Step, clientsMan: string): Point[] {
  const taken = (party: "inspection body" | "client", point: NonNullable<Point["point"]>, person: string): Point => ({
    party,
    point,
    outcome: point === "hold" || point === "witness" ? "attended" : "reviewed",
    person,
    date: done,
  });
  return [
    { party: "maker", point: "perform", outcome: "attended", person: by, date: done },
    ...(body === undefined ? [] : [taken("inspection body", body, "E1")]),
    ...(client === undefined ? [] : [taken("client", client, clientsMan)]),
  ];
}

/** The records of a plan: its steps, those that must be done before each, and who of the client took part. */
export const planOf = (
  steps: readonly Step[],
  after: Readonly<Record<number, readonly number[]>>,
  clientsMan: string,
): readonly InspectionStep[] =>
  steps.map((step) => {
    const before = after[step.step] ?? [];
    return {
      id: idOf(step.step),
      step: step.step,
      phase: step.phase,
      activity: step.activity,
      criterion: step.criterion,
      ...(step.procedure !== undefined && { procedure: step.procedure }),
      ...(before.length > 0 && { predecessors: before.map(idOf) }),
      points: pointsOf(step, clientsMan),
      records: [...step.records],
      planned: step.done,
      ...(step.notice !== undefined && { notice: step.notice }),
      done: step.done,
    };
  });

import type { CalculationSheet } from "../generated/records.ts";
import { basisText } from "./sheet-basis.ts";
import type { BoundInput, ComputedStep, Done } from "../../src/model/book.ts";
import type { Calculation } from "../../src/model/calculation.ts";
import { addressOf } from "../../src/model/record.ts";
import { roundDown, roundNearest, roundUp } from "../../src/model/print-number.ts";
import { stablePath } from "../../src/model/stable.ts";
import type { JudgedBook } from "../../src/model/book.ts";

/** How a job's sheets are numbered, and when each was made. */
export interface Sheeted {
  /** The number of the job. */
  readonly job: string;
  readonly dayOf: (computed: Done) => string;
}

/**
 * The maker's sheets of a job, rounded as a designer prints them. They are made from the recomputation itself, so they
 * show agreement; the receiver's are written by hand, and sheets that do not agree are among the planted faults.
 */
export function sheetsOf(judged: JudgedBook, job: Sheeted): readonly CalculationSheet[] {
  const sheeted = judged.computed
    .filter((one) => one.state === "done")
    .filter(({ calculation, subject }) => isOfPaper(calculation, subject.kind))
    .sort((a, b) => added.indexOf(a.calculation.id) - added.indexOf(b.calculation.id));
  return asNumbered(sheeted).map((computed, index) =>
    sheetOf(judged, job, computed, `CAL-${String(index + 1).padStart(3, "0")}`),
  );
}

/** The hold was written up before the openings: its sheet keeps its number, whatever its inputs rest on. */
function asNumbered(sheeted: readonly Done[]): readonly Done[] {
  const isHold = ({ calculation }: Done) => calculation.id === "pressure-hold";
  const others = sheeted.filter((one) => !isHold(one));
  const openings = others.findIndex(({ calculation }) => calculation.id === "shell-opening");
  return openings < 0 ? sheeted : [...others.slice(0, openings), ...sheeted.filter(isHold), ...others.slice(openings)];
}

/** Calculations that were added last: their sheets are numbered after all others. */
const added: readonly string[] = [
  "breathing-space",
  "furnace-test",
  "reversal-chamber-test",
  "access-tube-test",
  "opening-spacing",
];
/** Values that logs, reports and certificates state themselves need no paper of their own. */
const withoutPaper: ReadonlySet<string> = new Set(["carbon-equivalent", "heat-input", "hold-drift", "source-distance"]);
/** What only states limits stands in the plan of the test, and is no calculation a designer signs. */
const isOfPaper = ({ id, announces, accept }: Calculation, kind: string) =>
  !withoutPaper.has(id) &&
  (announces === undefined || accept.length > 0) &&
  kind !== "tube-end-group" &&
  kind !== "fitting";

function sheetOf(judged: JudgedBook, { job, dayOf }: Sheeted, computed: Done, id: string): CalculationSheet {
  const { calculation, subject, pointer, inputs, steps } = computed;
  const kind = judged.definitions.kinds.get(subject.kind);
  const row = pointer === "" || kind === undefined ? "" : `#${rowIn(stablePath(kind, subject.value, pointer))}`;
  const date = dayOf(computed);
  const compared = new Map(calculation.compared.map(({ symbol, unsafe }) => [symbol, unsafe]));
  const adopted = calculation.adopted === undefined ? undefined : inputs.get(calculation.adopted)?.written;
  return {
    id,
    calculation: calculation.id,
    subject: `${addressOf(subject)}${row}`,
    number: `${job}-03-${id}`,
    revision: "0",
    date,
    preparedBy: "R1",
    checkedBy: "R2",
    basis: basisText(calculation.basis),
    inputs: [...inputs.values()].flatMap((one) => {
      const input = calculation.inputs[one.symbol];
      const value = inputText(input?.unit ?? "1", input?.unsafe ?? "any", one);
      return value === undefined ? [] : [{ symbol: one.symbol, value }];
    }),
    results: steps
      .filter(({ step }) => compared.has(step.symbol))
      .map((done) => ({ symbol: done.step.symbol, value: resultText(done, compared.get(done.step.symbol) ?? "any") })),
    ...(adopted !== undefined && { adopted }),
    signatures: [
      { role: "design", person: "R1", date },
      { role: "checker", person: "R2", date },
    ],
  };
}

/** `tubeFields[front, pass 2]` names the row "front, pass 2". */
const rowIn = (path: string): string => /\[(.*)\]$/.exec(path)?.[1] ?? path;

/** An input as the record states it; one that another calculation gave, rounded on the safe side. */
function inputText(unit: string, unsafe: Unsafe, { value, written, origin, rows }: BoundInput): string | undefined {
  if (rows !== undefined || origin === undefined || origin.type === "default") return undefined;
  if (origin.type !== "calculation" || value === undefined) return written;
  return withUnit(safely(value, 3, unsafe), unit);
}

function resultText({ step, value }: ComputedStep, unsafe: Unsafe): string {
  return step.options?.[value] ?? withUnit(safely(value, step.round?.decimals ?? 4, unsafe), step.unit);
}

type Unsafe = "low" | "high" | "any";

/** So many decimals, rounded away from the side that would be unsafe. */
function safely(value: number, decimals: number, unsafe: Unsafe): string {
  const round = { low: roundUp, high: roundDown, any: roundNearest }[unsafe];
  return round(value, decimals).toFixed(Math.max(0, decimals));
}

const withUnit = (number: string, unit: string) => (unit === "1" ? number : `${number} ${unit}`);

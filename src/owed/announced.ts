import type { Announcement, Calculation } from "../model/calculation.ts";
import type { Computed, Done } from "../model/book.ts";
import { printAllowed, printNumber, printRequired, printFigure, withUnit } from "../model/print-number.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { kindWords } from "../model/titles.ts";
import { thingWords, titleOf, type Book } from "./things.ts";

/** What will be asked of a measurement before it is made, computed for this thing. */
export interface Announced {
  /** "equipment TQ423-01", and what it is called beside its id. */
  readonly thing: string;
  readonly title: string;
  /** "pressure test": the measurement that is awaited. */
  readonly of: string;
  /** What the limits are counted at. */
  readonly remark: string;
  /** "required test pressure: at least 15.73 bar", rounded the safe way; none while it cannot be computed. */
  readonly limits: readonly string[];
}

/** Limits that calculations announce for measurements the book does not hold yet, in the order of the calculations. */
export function announcedIn(book: Book): readonly Announced[] {
  return book.computed.flatMap((one) => {
    const { announces } = one.calculation;
    if (announces === undefined || isMeasured(book, one.subject, announces.awaits)) return [];
    return [
      {
        thing: thingWords(book, { record: one.subject, pointer: one.pointer }),
        title: titleOf(book, one.subject),
        of: kindWords(book.definitions.kinds, announces.awaits),
        remark: announces.remark,
        limits: one.state === "done" ? limitsOf(book, one, announces) : [],
      },
    ];
  });
}

/** Whether a record of a kind names it already: then the measurement itself is judged. */
const isMeasured = ({ graph }: Book, subject: BookRecord, kind: string): boolean =>
  (graph.back.get(addressOf(subject)) ?? []).some(({ from }) => from.kind === kind);

function limitsOf({ parameters }: Book, done: Done, { limits }: Announcement): readonly string[] {
  return limits.flatMap((limit) => {
    const [means, said] =
      "symbol" in limit
        ? [meansOf(done.calculation, limit.symbol), valueOf(done, limit.symbol)]
        : [limit.means, parameters.get(limit.parameter)?.value];
    // A mail needs no blank of a fixed width.
    return said === undefined ? [] : [`${means}: ${limit.is} ${said.replaceAll(/\s/g, " ")}`];
  });
}

const meansOf = ({ inputs, steps }: Calculation, symbol: string): string =>
  inputs[symbol]?.means ?? steps.find((step) => step.symbol === symbol)?.means ?? "";

function valueOf({ steps, inputs, calculation }: Extract<Computed, Done>, symbol: string): string | undefined {
  const computed = steps.find(({ step }) => step.symbol === symbol);
  if (computed === undefined) {
    const input = inputs.get(symbol);
    const unit = calculation.inputs[symbol]?.unit ?? "";
    return input?.written ?? (input?.value === undefined ? undefined : withUnit(printFigure(input.value), unit));
  }
  const { step, value } = computed;
  if (step.round === undefined) return withUnit(printFigure(value), step.unit);
  const { decimals, direction } = step.round;
  const print = direction === "up" ? printRequired : direction === "down" ? printAllowed : printNumber;
  return withUnit(print(value, decimals), step.unit);
}

import { describeBasis } from "../../model/basis.ts";
import type { ComputedStep, Done } from "../../model/book.ts";
import { related, substitute, symbolDisplay, typeset } from "../../model/formula/typeset.ts";
import { printAllowed, printNumber, printRequired } from "../../model/print-number.ts";
import { formulaOf } from "../../model/formula/formula-of.ts";
import type { CalculationStep, Note } from "../blocks.ts";
import { formsOf, shortNumber } from "./calculation-symbols.ts";
import { figure, withUnit } from "./numbers.ts";
import { upper } from "./titles.ts";

/** A step as it is printed: in words, as a formula, with values, and its result. */
export function stepBlock(computed: Done, done: ComputedStep): CalculationStep {
  const { step, value, governing, lines } = done;
  const display = formsOf(computed);
  const formula = formulaOf(step.formula);
  const named = computed.calculation.functions?.find((one) => formula.type === "call" && formula.name === one.name);
  const left = symbolDisplay(step.symbol, display.get(step.symbol));
  const values = new Map(
    [...computed.inputs].flatMap(([symbol, bound]) =>
      bound.value === undefined ? [] : [[symbol, shortNumber(bound)] as const],
    ),
  );
  for (const other of computed.steps) values.set(other.step.symbol, figure(other.value));
  const notes: Note[] = [
    ...(named === undefined ? [] : [{ text: [named.means] }, { lead: "Basis", text: [describeBasis(named.basis)] }]),
    ...(step.basis === undefined ? [] : [{ lead: "Basis", text: [describeBasis(step.basis)] }]),
    ...(step.round?.direction === "up"
      ? [{ text: ["Required values are rounded up."] }]
      : step.round?.direction === "down"
        ? [{ text: ["Allowed values are rounded down."] }]
        : []),
  ];
  const rounded = roundedOf(done);
  return {
    means: `${upper(step.means)}.`,
    formula: related(left, "=", typeset(formula, display)),
    ...(named === undefined && { substituted: related(left, "=", substitute(formula, values, display)) }),
    result: step.options !== undefined ? (step.options[value] ?? String(value)) : withUnit(figure(value, 9), step.unit),
    ...(rounded !== undefined && { rounded: withUnit(rounded, step.unit) }),
    ...(governing !== undefined && { governs: governs(governing, step.unit) }),
    lines,
    notes,
  };
}

const places = ["first", "second", "third", "fourth", "fifth"];

function governs({ index, values }: NonNullable<ComputedStep["governing"]>, unit: string): string {
  const others = values.flatMap((value, at) => (at === index ? [] : [withUnit(figure(value), unit)]));
  return `The ${places[index] ?? `${index + 1}th`} governs; the other${others.length === 1 ? "" : "s"}: ${others.join(", ")}.`;
}

/** Rounded the safe way where the step says so, else nine significant digits at most. */
export function resultOf(done: ComputedStep): string {
  const { step, value } = done;
  if (step.options !== undefined) return step.options[value] ?? String(value);
  return withUnit(roundedOf(done) ?? figure(value), step.unit);
}

function roundedOf({ step, value }: ComputedStep): string | undefined {
  if (step.round === undefined) return undefined;
  const { decimals, direction } = step.round;
  return direction === "up"
    ? printRequired(value, decimals)
    : direction === "down"
      ? printAllowed(value, decimals)
      : printNumber(value, decimals);
}

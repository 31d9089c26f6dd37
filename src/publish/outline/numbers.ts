import type { Computed } from "../../model/book.ts";
import { printNumber } from "../../model/print-number.ts";
import { unitLabel } from "../../model/units.ts";

/** A computed number with so many significant digits at most; zeros that say nothing are left out. */
export function figure(value: number, significant = 6): string {
  const short = Number(value.toPrecision(significant));
  if (!Number.isFinite(short)) return "not defined";
  const decimals = /\.(\d+)$/.exec(short.toFixed(12).replace(/0+$/, ""))?.[1]?.length ?? 0;
  return printNumber(short, Math.min(decimals, 9));
}

/** "5.86 mm"; a pure number stands alone. */
export function withUnit(number: string, unit: string): string {
  const label = unitLabel(unit);
  return label === "" ? number : `${number} ${label}`;
}

/** Unit of a symbol of a calculation, or of an expression that begins with one: "1" when it is none. */
export function unitOfSymbol({ calculation }: Computed, expression: string): string {
  const input = calculation.inputs[expression];
  if (input !== undefined) return input.options === undefined ? input.unit : "1";
  const step = calculation.steps.find(({ symbol }) => symbol === expression);
  return step === undefined || step.options !== undefined ? "1" : step.unit;
}

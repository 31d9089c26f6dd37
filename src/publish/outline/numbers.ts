import type { Computed } from "../../model/book.ts";
import { unitLabel } from "../../model/units.ts";

export { printFigure as figure } from "../../model/print-number.ts";

/** "5.86 mm"; a pure number stands alone. */
export function withUnit(number: string, unit: string): string {
  const label = unitLabel(unit);
  return label === "" ? number : `${number} ${label}`;
}

/** Unit of a symbol of a calculation, or of an expression that begins with one: "1" when it is none. */
export function unitOfSymbol({ calculation }: Pick<Computed, "calculation">, expression: string): string {
  const input = calculation.inputs[expression];
  if (input !== undefined) return input.options === undefined ? input.unit : "1";
  const step = calculation.steps.find(({ symbol }) => symbol === expression);
  return step === undefined || step.options !== undefined ? "1" : step.unit;
}

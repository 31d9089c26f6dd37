import { roundNearest } from "./print-number.ts";
import { measure, parseQuantity } from "./quantity.ts";
import { convert, unitLabel } from "./units.ts";

/** A number that a sentence sets beside another: computed, or as a record writes it. */
export interface Figure {
  readonly value: number;
  /** Unit of the value, "1" for a pure number. */
  readonly unit: string;
  /** As the record writes it: shown with its own digits and unit. */
  readonly written?: string;
}

/** Figures of this many digits are enough for most; more are shown where two would look alike. */
const usual = 4;
/** More would differ between machines. */
const mostDecimals = 12;

/**
 * Two figures in words, rounded just enough that they differ, and the greater one looks greater: "20.0 mm" and "20.04 mm".
 * What a record writes keeps its digits, and lends the other its unit. Figures that are equal look equal.
 */
export function apart(left: Figure, right: Figure): readonly [string, string] {
  const unit = writtenUnit(left) ?? writtenUnit(right) ?? left.unit;
  const [a, b] = [inUnit(left, unit), inUnit(right, unit)];
  const size = Math.max(Math.abs(a.value), Math.abs(b.value));
  const least = size === 0 || !Number.isFinite(size) ? 0 : Math.max(0, usual - 1 - Math.floor(Math.log10(size)));
  const order = Math.abs(a.value - b.value) <= 1e-9 * size ? 0 : Math.sign(a.value - b.value);
  for (let decimals = least; decimals < mostDecimals; decimals++) {
    const [shownA, shownB] = [shown(a, decimals), shown(b, decimals)];
    if (order === 0 || Math.sign(shownA - shownB) === order) return [said(a, shownA, unit), said(b, shownB, unit)];
  }
  return [said(a, a.value, unit), said(b, b.value, unit)];
}

/** One computed figure in words, to the usual digits. */
export function figure(value: number, unit: string): string {
  return apart({ value, unit }, { value, unit })[0];
}

function writtenUnit({ written, unit }: Figure): string | undefined {
  if (written === undefined) return undefined;
  const parsed = parseQuantity(written, { unit });
  return parsed.ok && parsed.quantity.sign === "=" ? parsed.quantity.unit : undefined;
}

/** The figure in another unit of its dimension; the writing is kept where it is in that unit and states no bound. */
function inUnit(figure: Figure, unit: string): Figure {
  const { written } = figure;
  const parsed = written === undefined ? undefined : parseQuantity(written, { unit });
  if (parsed?.ok === true && written !== undefined && parsed.quantity.sign === "=") {
    const { value } = measure(parsed.quantity, unit);
    return parsed.quantity.unit === unit ? { value, unit, written } : { value, unit };
  }
  return { value: convert(figure.value, figure.unit, unit), unit };
}

const shown = ({ value, written }: Figure, decimals: number) =>
  written !== undefined ? value : roundNearest(value, decimals);

const said = ({ value, written }: Figure, rounded: number, unit: string) => {
  if (written !== undefined) return written;
  // A small figure beside a large one is no nought.
  const number = rounded === 0 && value !== 0 ? Number(value.toPrecision(2)) : rounded;
  return `${Number.isFinite(number) ? String(number) : "not defined"} ${unitLabel(unit)}`.trimEnd();
};

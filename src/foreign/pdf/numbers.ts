import type { PdfFile } from "./file.ts";
import { isList, type PdfValue } from "./values.ts";

/** A list of numbers; undefined when it is none. */
export function numbersOf(file: PdfFile, value: PdfValue | undefined): readonly number[] | undefined {
  const list = file.resolve(value);
  if (!isList(list)) return undefined;
  const numbers = list.map((item) => file.resolve(item)).filter((item) => typeof item === "number");
  return numbers.length === list.length && numbers.every(Number.isFinite) ? numbers : undefined;
}

import { quantity, text, type Thing } from "./input.ts";
import type { Measure } from "./quantity.ts";

/** Wires of an image quality indicator by their number; there is none of number 0. A higher number is a thinner wire. */
export const wireNames: readonly string[] = Array.from({ length: 20 }, (_, number) => `W${number}`);

/** One line of a table of required wires: from above this thickness on, up to where the next line begins. */
export const wirePoint = { over: quantity("over", "mm"), wire: text("wire") } as const;

interface Line {
  readonly over: Measure;
  readonly wire: string;
}

/** Number of a wire as it is printed, "W15" or "W 15"; undefined where the text names no wire of ISO 19232-1. */
export function wireNumber(printed: string): number | undefined {
  const digits = /^W ?([1-9]\d?)$/i.exec(printed.trim())?.[1];
  const number = Number(digits);
  return digits !== undefined && number < wireNames.length ? number : undefined;
}

/**
 * The line of a table that holds for a thickness in mm: the last one that begins below it. Undefined where none does.
 * The lines may stand in any order.
 */
export function lineFor<L extends Line>(lines: readonly L[], thickness: number): L | undefined {
  return lines
    .filter(({ over }) => over.value < thickness)
    .reduce<L | undefined>(
      (last, line) => (last === undefined || line.over.value > last.over.value ? line : last),
      undefined,
    );
}

/** Lines of a table as definitions read them. */
export type WireLines = readonly Thing<typeof wirePoint>[];

/** How a film was exposed and where its indicator stood, as records say it. */
export const arrangements = {
  singleSource: "single wall, indicator on source side",
  singleFilm: "single wall, indicator on film side",
  doubleSingle: "double wall, single image, indicator on film side",
  doubleFilm: "double wall, double image, indicator on film side",
  doubleSource: "double wall, double image, indicator on source side",
} as const;

import type { CalculationWords } from "../../sheets/calculation-sheet.ts";
import { calculationWords } from "../../sheets/calculation-words.ts";

/** How the thickness of the knuckle is found, for an end whose r/Dc lies between 0.1 and 0.2, as these ends' does. */
const knuckle: readonly string[] = [
  "ey = β · p · (0.75 · Rc + 0.2 · Dc) / f, with Y = min(ey/Rc, 0.04) of the ey found, repeated until it stands",
  "β = 10 · ((0.2 - X) · β1 + (X - 0.1) · β2), X = r/Dc, Z = lg(1/Y), β2 = max(0.95 · (0.56 - 1.94 · Y - 82.5 · Y^2), 0.5)",
  "β1 = (1.006 - 1/(6.2 + (90 · Y)^4)) · (-0.1833 · Z^3 + 1.0383 · Z^2 - 1.2943 · Z + 0.837)",
];
const buckling = ", with ebr = eb where ey is at most 0.005 · Dc, else 0";

/** The words of every sheet; that of the ends prints also what a reader needs to find ey and ebr by hand. */
export function wordsWithKnuckle(id: string): CalculationWords | undefined {
  const words = calculationWords(id);
  if (words === undefined || id !== "torispherical-end") return words;
  const lines = words.lines.flatMap((line) => {
    if (line.startsWith("es =")) return [line, ...knuckle];
    return line.startsWith("e =") ? [line + buckling] : [line];
  });
  return { ...words, lines };
}

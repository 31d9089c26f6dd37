import type { SheetBudget } from "../limits.ts";
import { readPart } from "./xml.ts";
import type { Archive } from "./zip.ts";

/** A text as it stands in a file, with signs that XML cannot hold written `_x000A_`. */
export const plainText = (text: string): string =>
  text.includes("_x")
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)))
    : text;

/** Gathers the text of the elements `t`, those of all runs with other letters in one; how it is pronounced is left out. */
export interface TextGatherer {
  open(name: string): void;
  text(text: string): void;
  close(name: string): void;
  /** The text gathered, which is forgotten. */
  taken(place: string): string;
}

export function gatherText(budget: SheetBudget): TextGatherer {
  let gathered = "";
  let inText = false;
  let spoken = 0;
  return {
    open(name) {
      if (name === "t") inText = true;
      else if (name === "rPh") spoken++;
    },
    text(text) {
      if (inText && spoken === 0 && gathered.length <= budget.limits.text) gathered += text;
    },
    close(name) {
      if (name === "t") inText = false;
      else if (name === "rPh") spoken--;
    },
    taken(place) {
      budget.text(gathered.length, place);
      const text = plainText(gathered);
      gathered = "";
      return text;
    },
  };
}

/** The texts that cells share, in their order. */
export async function sharedStrings(archive: Archive, part: string, budget: SheetBudget): Promise<readonly string[]> {
  const strings: string[] = [];
  const gatherer = gatherText(budget);
  await readPart(archive, part, budget, {
    ...gatherer,
    close(name) {
      gatherer.close(name);
      if (name !== "si") return;
      budget.spend("strings");
      const text = gatherer.taken(`shared text ${strings.length + 1}`);
      budget.spend("signs", text.length);
      strings.push(text);
    },
  });
  return strings;
}

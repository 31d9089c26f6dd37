/**
 * How an id or a link is made of cells: `CRT-{Certificate}`, `L{Seam:2}` (zeros before it, to two digits), `{}` for the cell
 * itself. What is put in is folded to the alphabet of ids: capital letters; blanks, `/`, `\`, `_` and `,` become a hyphen,
 * several hyphens one. Behind `#` or `@` (a row, a revision) it stays as it is written.
 */
export interface Template {
  readonly text: string;
  readonly parts: readonly (string | Slot)[];
}

export interface Slot {
  /** Heading of the column; "" is the column itself. */
  readonly heading: string;
  readonly width?: number;
}

/** Reads a template. Gives a sentence where it is none. */
export function templateOf(text: string): Template | { readonly fault: string } {
  const parts: (string | Slot)[] = [];
  let rest = text;
  while (rest !== "") {
    const open = rest.indexOf("{");
    const literal = open < 0 ? rest : rest.slice(0, open);
    if (literal.includes("}")) return { fault: 'a "}" without "{"' };
    if (literal !== "") parts.push(literal);
    if (open < 0) break;
    const close = rest.indexOf("}", open);
    if (close < 0) return { fault: 'a "{" without "}"' };
    const inside = rest.slice(open + 1, close);
    const [, heading = inside, width] = /^(.*):(\d)$/.exec(inside) ?? [];
    parts.push({ heading: heading.trim(), ...(width !== undefined && { width: Number(width) }) });
    rest = rest.slice(close + 1);
  }
  return { text, parts };
}

export const headingsOf = ({ parts }: Template): readonly string[] =>
  parts.flatMap((part) => (typeof part === "string" || part.heading === "" ? [] : [part.heading]));

export type Filled = { readonly text: string } | { readonly blank: readonly string[] } | { readonly fault: string };

/** Puts the texts of cells into a template: `blank` names the headings that have none. `folds`: it makes an id or a link. */
export function fill(template: Template, textOf: (heading: string) => string | undefined, folds: boolean): Filled {
  let text = "";
  const blank: string[] = [];
  for (const part of template.parts) {
    if (typeof part === "string") {
      text += part;
      continue;
    }
    const cell = textOf(part.heading);
    if (cell === undefined || cell === "") {
      blank.push(part.heading);
      continue;
    }
    const padded = part.width !== undefined && /^\d+$/.test(cell) ? cell.padStart(part.width, "0") : cell;
    if (!folds || /[#@]/.test(text)) text += padded;
    else {
      const folded = foldId(padded);
      if (folded === undefined) {
        const sign = Array.from(padded).find((one) => foldId(`A${one}A`) === undefined) ?? padded;
        return { fault: `"${padded}" holds "${sign}", which no id may have` };
      }
      text += folded;
    }
  }
  return blank.length > 0 ? { blank } : { text };
}

/** "WL" of weld-log: what ids of a kind that are proposed begin with. */
export const initialsOf = (kind: string): string =>
  kind
    .split("-")
    .map((word) => word.charAt(0).toUpperCase())
    .join("");

/** A text in the alphabet of ids, or undefined where a sign has no place in it. */
export function foldId(text: string): string | undefined {
  const folded = text
    .toUpperCase()
    .replaceAll(/[\s/\\_,]+/g, "-")
    .replaceAll(/-{2,}/g, "-")
    .replaceAll(/^-|-$/g, "");
  return /^[A-Z0-9.-]+$/.test(folded) ? folded : undefined;
}

import type { Block, Cell, Text } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { spellControls } from "../../model/spelled.ts";
import { plainText } from "../../model/formula/plain-text.ts";

/** Page number in the list, anchor ("" is the page itself), and the text looked through. */
type Entry = readonly [number, string, string];

// A row is found by what stands at its beginning; whole rows would make the index as large as the book.
const longestText = 120;

/** Collects, page by page, what can be found on them. */
export interface FindIndex {
  /** What stands on the page of this place in the order of the book. */
  add(at: number, blocks: readonly Block[]): void;
  /**
   * Source of the script `find-index.js`: every page, and every place on it that links can land on, in the order of the
   * book. Plain lists that are read through; at this size no other index is smaller or quicker.
   */
  script(): string;
}

export function newFindIndex(pages: readonly Page[]): FindIndex {
  const listed = pages.map(({ url, number = "", title }) => [
    url,
    spellControls([number, title].filter(Boolean).join(" ")),
  ]);
  const entries = pages.map(({ kindLine = "", sought = [] }, at): Entry[] => [
    [at, "", kindLine],
    // Names are kept whole: who looks for one types its end as well.
    ...sought.map(({ anchor = "", text }): Entry => [at, anchor, spellControls(text)]),
  ]);
  return {
    add(at, blocks) {
      const own = entries[at];
      for (const block of blocks)
        for (const [anchor, text] of placesOf(block))
          own?.push([at, anchor, spellControls(text.slice(0, longestText))]);
    },
    script: () => `window.findIndex = ${scriptText({ pages: listed, entries: entries.flat() })};\n`,
  };
}

function placesOf(block: Block): (readonly [string, string])[] {
  const place = (anchor: string | undefined, text: string): (readonly [string, string])[] =>
    anchor === undefined || text === "" ? [] : [[anchor, text]];
  switch (block.type) {
    case "heading":
      return place(block.anchor, [block.number ?? "", block.text].filter(Boolean).join(" "));
    case "table":
      return block.groups.flat().flatMap((row) => place(row.anchor, row.cells.map(cellText).filter(Boolean).join(" ")));
    case "findings":
      return block.findings.flatMap((finding) =>
        place(finding.anchor, `${finding.severity}: ${plain(finding.message)}`),
      );
    case "facts":
      return block.facts.flatMap((fact) => place(fact.anchor, `${fact.label} ${plain(fact.value)}`));
    case "chain":
      return block.links.flatMap((link) => place(link.anchor, `${link.what}: ${link.mark}`));
    case "scan":
      return place(block.anchor, `${block.title} ${block.path}`);
    case "anchor":
      return place(block.anchor, block.anchor);
    default:
      return [];
  }
}

function cellText(cell: Cell): string {
  switch (cell.type) {
    case "text":
      return plain(cell.text);
    case "number":
      return cell.text;
    case "mark":
      return cell.mark;
    case "ditto":
      return cell.full;
    case "range":
    case "empty":
      return "";
  }
}

/** Running text without its marks. */
const plain = (text: Text): string =>
  text
    .map((part) => (typeof part === "string" ? part : part.type === "symbol" ? plainText(part.display) : part.text))
    .join("");

/** JSON that is safe as the text of a script, whatever stands in it. */
const scriptText = (value: unknown) =>
  JSON.stringify(value).replaceAll(
    /[<>&\u2028\u2029]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

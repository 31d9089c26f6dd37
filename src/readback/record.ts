import { isObject } from "../model/json.ts";
import type { OriginalText } from "../model/page-text.ts";
import type { BookRecord } from "../model/record.ts";
import { nearestTo } from "./nearest.ts";
import { pagesOf, stands, type Pages } from "./search.ts";
import { sheetOf, type Sheet } from "./sheet.ts";
import { transcribedValues, type Names, type Transcribed } from "./values.ts";

/** Pages of an original that a record cites. */
export interface Cited {
  /** Pointer of the source in the record. */
  readonly pointer: string;
  readonly original: BookRecord;
  readonly from: number;
  readonly to: number;
}

/** A value that is not on the pages cited for it. */
export interface NotThere {
  readonly value: Transcribed;
  /** What the pages have that is most like it. */
  readonly nearest: string | undefined;
}

/** The values a record takes from one stretch of pages, and those of them that are not there. */
export interface Reading {
  readonly cited: Cited;
  readonly state: "read" | "recognised" | "no text" | "unread";
  readonly why?: string;
  readonly values: readonly Transcribed[];
  readonly absent: readonly NotThere[];
  /** Values taken from there that were not looked for, because something is wrong with them already. */
  readonly passed: number;
}

/** Reads papers for one book: each page is laid out once. */
export interface Reader {
  /** Reads a record back; `passed` says of places that are not looked at, because something is wrong with them already. */
  read(record: BookRecord, passed: (pointer: string) => boolean): readonly Reading[];
}

/** `textOf` gives the text of an original; undefined where there is no file to read. */
export function newReader(names: Names, textOf: (original: BookRecord) => OriginalText | undefined): Reader {
  const sheets = new Map<string, Sheet>();
  const ranges = new Map<string, Pages>();
  const pages = ({ original, from, to }: Cited, text: Extract<OriginalText, { pages: unknown }>): Pages => {
    const name = `${original.id} ${from} ${to}`;
    const before = ranges.get(name);
    if (before !== undefined) return before;
    const made = pagesOf(
      text.pages.slice(from - 1, to).map((page, index) => {
        const own = `${original.id} ${from + index}`;
        const sheet = sheets.get(own) ?? sheetOf(page);
        sheets.set(own, sheet);
        return sheet;
      }),
    );
    ranges.set(name, made);
    return made;
  };
  const readOne = (cited: Cited, values: readonly Transcribed[], passed: number): Reading => {
    const text = textOf(cited.original);
    if (text === undefined)
      return { cited, state: "unread", why: "there is no file to read", values, absent: [], passed };
    if ("none" in text) return { cited, state: "unread", why: text.none, values, absent: [], passed };
    const shown = text.pages.slice(cited.from - 1, cited.to);
    if (shown.every(({ words }) => words.length === 0)) return { cited, state: "no text", values, absent: [], passed };
    const state = shown.some(({ unseen }) => unseen) ? "recognised" : "read";
    const on = pages(cited, text);
    const missing = values.filter(({ parts }) => !parts.every((part) => stands(part, on)));
    return { cited, state, values, absent: missing.map((value) => near(value, on, values, missing)), passed };
  };
  return {
    read(record, passed) {
      const cited = citedBy(record, names);
      if (cited.length === 0) return [];
      const bySource = new Map<Cited, Transcribed[]>();
      const passedOver = new Map<Cited, number>();
      for (const value of transcribedValues(record, names)) {
        const source = sourceOf(value.pointer, cited);
        if (source === undefined) continue;
        if (passed(value.pointer)) {
          passedOver.set(source, (passedOver.get(source) ?? 0) + 1);
          continue;
        }
        const list = bySource.get(source);
        if (list === undefined) bySource.set(source, [value]);
        else list.push(value);
      }
      return [...bySource].map(([source, values]) => readOne(source, values, passedOver.get(source) ?? 0));
    },
  };
}

function near(
  value: Transcribed,
  on: Pages,
  values: readonly Transcribed[],
  missing: readonly Transcribed[],
): NotThere {
  const claimed = new Set(
    values.filter((one) => !missing.includes(one)).flatMap(({ parts }) => parts.map(({ first }) => first)),
  );
  const part = value.parts.find((one) => !stands(one, on));
  return { value, nearest: part === undefined ? undefined : nearestTo(part, on, claimed) };
}

/** The pages a record cites: of the whole record, and of single places in it, the longest place first. */
export function citedBy(record: BookRecord, { graph }: Pick<Names, "graph">): readonly Cited[] {
  const found: Cited[] = [];
  for (const { pointer, to } of graph.out.get(record)?.values() ?? []) {
    const base = /^\/(?:source|sources\/[^/]+)(?=\/original$)/.exec(pointer)?.[0];
    if (base === undefined || to === undefined) continue;
    const [, list, name] = base.split("/");
    const all = record.value[list ?? ""];
    const place = name?.replaceAll("~1", "/").replaceAll("~0", "~");
    const source = place === undefined ? all : isObject(all) ? all[place] : undefined;
    if (!isObject(source) || typeof source["page"] !== "number") continue;
    const last = source["to"];
    const from = source["page"];
    found.push({ pointer: base, original: to, from, to: typeof last === "number" ? Math.max(from, last) : from });
  }
  return found.sort((a, b) => b.pointer.length - a.pointer.length);
}

/** Which of the cited pages speaks of a place: the source named for it or around it, else that of the record. */
function sourceOf(pointer: string, cited: readonly Cited[]): Cited | undefined {
  return cited.find(({ pointer: base }) => {
    const place = base.split("/")[2]?.replaceAll("~1", "/").replaceAll("~0", "~");
    return place === undefined || pointer === place || pointer.startsWith(`${place}/`);
  });
}

import { addTo, grouped } from "../model/grouped.ts";
import { isObject, stepsOf } from "../model/json.ts";
import type { OriginalText } from "../model/page-text.ts";
import type { BookRecord } from "../model/record.ts";
import { asRemembered, rememberedTasks, type ReadingMemory, type Task } from "./memory.ts";
import { misplaced } from "./misplaced.ts";
import { nearestTo } from "./nearest.ts";
import { pagesOf, stands, type Pages } from "./search.ts";
import { sheetOf, type Sheet } from "./sheet.ts";
import { labelsOf, transcribedValues, type Names, type Transcribed } from "./values.ts";

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
  /** What the pages have that is most like it, or what stands in its place. */
  readonly nearest: string | undefined;
  /** It stands there, but only in the places of other values. */
  readonly elsewhere?: true;
}

/** How many values a record takes from one stretch of pages, and those of them that are not there. */
export interface Reading {
  readonly cited: Cited;
  readonly state: "read" | "recognised" | "no text" | "unread";
  readonly why?: string;
  readonly values: number;
  readonly absent: readonly NotThere[];
  /** Values taken from there that were not looked for, because something is wrong with them already. */
  readonly passed: number;
}

/** What reading needs to know of a book. */
export interface Papers {
  readonly names: Names;
  /** The text of an original; undefined where there is no file to read. */
  readonly textOf: (original: BookRecord) => OriginalText | undefined;
  /** Places that are not looked at, because something is wrong with them already. */
  readonly passed: (record: BookRecord, pointer: string) => boolean;
  /** What was read of an original before stands as long as all that is taken from it does. */
  readonly memory?: ReadingMemory;
}

/**
 * Reads records back from the pages they cite; each page is laid out once. What is taken from an original is gathered when
 * its turn comes, and let go after it: all values of a large book at once are more than all else that is known of it.
 */
export function readRecords(
  records: readonly BookRecord[],
  papers: Papers,
): ReadonlyMap<BookRecord, readonly Reading[]> {
  const citing = records.flatMap((record) => {
    const cited = citedBy(record, papers.names);
    return [...new Set(cited.map(({ original }) => original))].map((original) => ({ record, cited, original }));
  });
  const results = new Map<BookRecord, Reading[]>();
  for (const [original, all] of grouped(citing, (one) => one.original)) {
    const own = all.flatMap(({ record, cited }) =>
      tasksOf(record, cited, papers).filter((task) => task.cited.original === original),
    );
    const text = papers.textOf(original);
    const read = () => readTasks(own, text, papers.names);
    const readings =
      papers.memory !== undefined && text !== undefined ? asRemembered(text, own, papers.memory, read) : read();
    own.forEach(({ record }, index) => {
      const reading = readings[index];
      if (reading !== undefined) addTo(results, record, reading);
    });
  }
  return results;
}

function tasksOf(record: BookRecord, cited: readonly Cited[], papers: Papers): readonly Task[] {
  const { names, memory } = papers;
  return memory === undefined
    ? tasksIn(record, cited, papers)
    : rememberedTasks(record, names, memory, () => tasksIn(record, cited, papers));
}

/** The values that a record takes from what it cites, by the stretch of pages. */
export function tasksIn(
  record: BookRecord,
  cited: readonly Cited[],
  { names, passed }: Pick<Papers, "names" | "passed">,
): readonly Task[] {
  const tasks = new Map<Cited, Task>();
  for (const value of transcribedValues(record, names)) {
    const source = sourceOf(value.pointer, cited);
    if (source === undefined) continue;
    const task = tasks.get(source) ?? { record, cited: source, values: [], passed: 0 };
    tasks.set(source, task);
    if (passed(record, value.pointer)) task.passed++;
    else task.values.push(value);
  }
  return [...tasks.values()];
}

/** Reads back all that was taken from one original: for each task its reading. */
function readTasks(tasks: readonly Task[], text: OriginalText | undefined, names: Names): readonly Reading[] {
  const empty = ({ cited, values, passed }: Task) => ({ cited, values: values.length, absent: [], passed });
  if (text === undefined || "none" in text) {
    const why = text === undefined ? "there is no file to read" : text.none;
    return tasks.map((task) => ({ why, ...empty(task), state: "unread" }));
  }
  const sheets = new Map<number, Sheet>();
  const ranges = new Map<string, Pages>();
  const pages = ({ from, to }: Cited): Pages => {
    const name = `${from} ${to}`;
    const made =
      ranges.get(name) ??
      pagesOf(
        text.pages.slice(from - 1, to).map((page, index) => {
          const sheet = sheets.get(from + index) ?? sheetOf(page);
          sheets.set(from + index, sheet);
          return sheet;
        }),
      );
    ranges.set(name, made);
    return made;
  };
  const shown = ({ from, to }: Cited) => text.pages.slice(from - 1, to);
  const legible = tasks.filter(({ cited }) => shown(cited).some(({ words }) => words.length > 0));
  const elsewhere = misplaced(
    legible.map(({ record, values, cited }) => ({
      kind: record.kind,
      id: record.id,
      values,
      labels: () => labelsOf(record, names),
      on: pages(cited),
    })),
  );
  return tasks.map((task) => {
    const { cited, values } = task;
    if (!legible.includes(task)) return { ...empty(task), state: "no text" };
    const state = shown(cited).some(({ unseen }) => unseen) ? "recognised" : "read";
    const on = pages(cited);
    const missing = new Set(values.filter(({ parts }) => !parts.every((part) => stands(part, on))));
    // Once for all that is missing: a log may have a thousand rows that are not on its page.
    const claimed = new Set(values.flatMap((one) => (missing.has(one) ? [] : one.parts.map(({ first }) => first))));
    const away = values.flatMap((value) => {
      const inPlace = elsewhere.get(value);
      return inPlace === undefined || missing.has(value) ? [] : [{ value, nearest: inPlace, elsewhere: true as const }];
    });
    const absent = [...[...missing].map((value) => near(value, on, claimed)), ...away];
    return { ...empty(task), state, absent };
  });
}

/** A value that is not on its page, and the nearest there that no other value accounts for. */
function near(value: Transcribed, on: Pages, claimed: ReadonlySet<string>): NotThere {
  const part = value.parts.find((one) => !stands(one, on));
  return { value, nearest: part === undefined ? undefined : nearestTo(part, on, claimed) };
}

/** The pages a record cites: of the whole record, and of single places in it, the longest place first. */
export function citedBy(record: BookRecord, { graph }: Pick<Names, "graph">): readonly Cited[] {
  const found: Cited[] = [];
  for (const { pointer, to } of graph.out.get(record)?.values() ?? []) {
    const base = /^\/(?:source|sources\/[^/]+)(?=\/original$)/.exec(pointer)?.[0];
    if (base === undefined || to === undefined) continue;
    const [list, place] = stepsOf(base);
    const all = record.value[list ?? ""];
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
    const place = stepsOf(base)[1];
    return place === undefined || pointer === place || pointer.startsWith(`${place}/`);
  });
}

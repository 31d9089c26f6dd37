import type { JudgedBook } from "../model/book.ts";
import type { Graph } from "../model/graph.ts";
import { isList, isObject, type Json } from "../model/json.ts";
import type { BookRecord } from "../model/record.ts";
import { changesBetween } from "../reading/changes.ts";
import { keptAddress } from "../reading/notes.ts";
import type { Memory, Notes } from "../reading/visits.ts";

/** A judged book that can be judged again once some of it has changed. */
export interface Remembered {
  readonly judged: JudgedBook;
  readonly memory: Memory;
}

/**
 * Gives of each record the very object that the book before had, where nothing of it has changed: what was remembered
 * of it then speaks of it now.
 */
export function keeper(before: Graph): (record: BookRecord) => BookRecord {
  const known = new Map<string, BookRecord>();
  for (const record of before.records) known.set(placeOf(record), record);
  return (record) => {
    const old = known.get(placeOf(record));
    return old !== undefined && (old === record || sameRecord(old, record)) ? old : record;
  };
}

// Two records may have one id, and a derived record stands where another does.
const placeOf = (record: BookRecord) => `${keptAddress(record)} ${record.file}${record.pointer}`;

const sameRecord = (a: BookRecord, b: BookRecord): boolean => a.faulty === b.faulty && sameJson(a.value, b.value);

/** Alike to the order of members. */
function sameJson(a: Json | undefined, b: Json | undefined): boolean {
  if (a === b) return true;
  if (isList(a)) return isList(b) && a.length === b.length && a.every((one, index) => sameJson(one, b[index]));
  if (!isObject(a) || !isObject(b)) return false;
  const [names, others] = [Object.keys(a), Object.keys(b)];
  return names.length === others.length && names.every((name, at) => name === others[at] && sameJson(a[name], b[name]));
}

/** How a book is judged after another, or so that it can be judged again; undefined where neither is asked for. */
export function notesFor(before: Memory | null, now: Memory, remember: boolean): Notes | undefined {
  if (before === null && !remember) return undefined;
  return {
    page: null,
    now: remember ? now : null,
    before:
      before === null || !sameFrame(before, now)
        ? null
        : { memory: before, changes: changesBetween(before.graph, now.graph, now.all.kinds) },
  };
}

/** Definitions, parameters and tables are read everywhere: with others in force everything is judged anew. */
function sameFrame(before: Memory, now: Memory): boolean {
  return (
    before.definitions === now.definitions &&
    JSON.stringify([...before.parameters]) === JSON.stringify([...now.parameters]) &&
    sameOwn(before.tables.own, now.tables.own)
  );
}

function sameOwn(before: Memory["tables"]["own"], now: Memory["tables"]["own"]): boolean {
  const [old, fresh] = [[...before.values()].flat(), [...now.values()].flat()];
  return old.length === fresh.length && old.every((record, index) => record === fresh[index]);
}

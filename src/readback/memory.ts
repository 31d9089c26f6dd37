import type { OriginalText } from "../model/page-text.ts";
import type { BookRecord } from "../model/record.ts";
import type { Cited, Reading } from "./record.ts";
import type { Names, Transcribed } from "./values.ts";

/** Values that one record takes from one stretch of pages. */
export interface Task {
  readonly record: BookRecord;
  readonly cited: Cited;
  readonly values: Transcribed[];
  passed: number;
}

/** How reading back remembers. */
export interface ReadingMemory {
  /** What is read now is remembered too. */
  readonly keep: boolean;
  /** Nothing in a record is passed over: what is taken from it follows from it and from what it leads to. */
  readonly isSound: (record: BookRecord) => boolean;
}

interface Read {
  readonly tasks: readonly Task[];
  readonly readings: readonly Reading[];
}

/** Of each text, what was last read back from it. */
const reads = new WeakMap<OriginalText, Read>();

/** What is read back from a text, or what was, where the very same values are taken from the same pages of it. */
export function asRemembered(
  text: OriginalText,
  tasks: readonly Task[],
  { keep }: ReadingMemory,
  read: () => readonly Reading[],
): readonly Reading[] {
  const before = reads.get(text);
  if (before !== undefined && alike(before.tasks, tasks, Object.is)) return before.readings;
  const readings = read();
  if (keep) reads.set(text, { tasks, readings });
  return readings;
}

interface Taken {
  readonly kinds: Names["kinds"];
  /** Its links: which pages it cites, and by which names a paper may call what it leads to. */
  readonly links: readonly (readonly [pointer: string, to: BookRecord | undefined])[];
  readonly tasks: readonly Task[];
}

const taken = new WeakMap<BookRecord, Taken>();

/** The tasks of a record, or the very same as before, where it is as it was and leads where it did. */
export function rememberedTasks(
  record: BookRecord,
  names: Names,
  { keep, isSound }: ReadingMemory,
  find: () => readonly Task[],
): readonly Task[] {
  if (!isSound(record)) return find();
  const links = [...(names.graph.out.get(record) ?? [])].map(([pointer, { to }]) => [pointer, to] as const);
  const before = taken.get(record);
  if (before !== undefined && before.kinds === names.kinds && alike(before.links, links, sameLink)) return before.tasks;
  const tasks = find();
  if (keep) taken.set(record, { kinds: names.kinds, links, tasks });
  return tasks;
}

const sameLink = ([pointer, to]: Taken["links"][number], [other, elsewhere]: Taken["links"][number]): boolean =>
  pointer === other && to === elsewhere;

const alike = <T>(list: readonly T[], other: readonly T[], same: (a: T, b: T) => boolean): boolean =>
  list.length === other.length &&
  list.every((one, index) => {
    const there = other[index];
    return there !== undefined && same(one, there);
  });

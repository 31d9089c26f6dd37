import type { OriginalText } from "../model/page-text.ts";
import type { BookRecord } from "../model/record.ts";
import type { Cited, Reading } from "./record.ts";
import { transcribedValues, type Names, type Transcribed } from "./values.ts";

/** Values that one record takes from one stretch of pages. */
export interface Task {
  readonly record: BookRecord;
  readonly cited: Cited;
  readonly values: Transcribed[];
  passed: number;
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
  { keep }: { readonly keep: boolean },
  read: () => readonly Reading[],
): readonly Reading[] {
  const before = reads.get(text);
  if (before !== undefined && alike(before.tasks, tasks, sameTask)) return before.readings;
  const readings = read();
  if (keep) reads.set(text, { tasks, readings });
  return readings;
}

const sameTask = (one: Task, other: Task): boolean =>
  one.record === other.record &&
  one.passed === other.passed &&
  one.cited.original === other.cited.original &&
  one.cited.pointer === other.cited.pointer &&
  one.cited.from === other.cited.from &&
  one.cited.to === other.cited.to &&
  alike(one.values, other.values, Object.is);

interface Taken {
  readonly kinds: Names["kinds"];
  /** Pointers of its links, and where each led: by the names of that a paper may call it. */
  readonly links: readonly (readonly [pointer: string, to: BookRecord | undefined])[];
  readonly values: readonly Transcribed[];
}

const taken = new WeakMap<BookRecord, Taken>();

/** As `transcribedValues`; the same values as before, one by one, of a record that is as it was and leads where it did. */
export function rememberedValues(
  record: BookRecord,
  names: Names,
  { keep }: { readonly keep: boolean },
): readonly Transcribed[] {
  const links = [...(names.graph.out.get(record) ?? [])].map(([pointer, { to }]) => [pointer, to] as const);
  const before = taken.get(record);
  if (before !== undefined && before.kinds === names.kinds && alike(before.links, links, sameLink))
    return before.values;
  const values = transcribedValues(record, names);
  if (keep) taken.set(record, { kinds: names.kinds, links, values });
  return values;
}

const sameLink = ([pointer, to]: Taken["links"][number], [other, elsewhere]: Taken["links"][number]): boolean =>
  pointer === other && to === elsewhere;

const alike = <T>(list: readonly T[], other: readonly T[], same: (a: T, b: T) => boolean): boolean =>
  list.length === other.length &&
  list.every((one, index) => {
    const there = other[index];
    return there !== undefined && same(one, there);
  });

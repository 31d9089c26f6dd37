import type { Finding } from "../model/finding.ts";
import type { Kind } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import type { Place } from "../model/place.ts";
import type { BookRecord } from "../model/record.ts";
import { pathNamedBy } from "../model/shelf.ts";
import { canonicalText, canonicalValue } from "./canonical.ts";
import { headOf } from "../model/json.ts";

/** The file a reached record stands in, alone. */
export interface Placed {
  readonly file: string;
  readonly value: BookRecord["value"];
  readonly text: string;
}

/** The file each reached record gets; of two that bear one id on one shelf the second is numbered. */
export function canonicalFiles(
  reached: readonly BookRecord[],
  kinds: ReadonlyMap<string, Kind>,
): ReadonlyMap<BookRecord, Placed> {
  const taken = new Map<string, number>();
  const inOrder = [...reached].sort((a, b) => byCodePoint(a.file, b.file) || byCodePoint(a.pointer, b.pointer));
  return new Map(
    inOrder.map((record) => {
      const stem = pathNamedBy(record, `${record.kind}/r-${record.id}`);
      const count = (taken.get(stem) ?? 0) + 1;
      taken.set(stem, count);
      const value = canonicalValue(record, kinds.get(record.kind));
      const file = `${stem}${count === 1 ? "" : `_${count}`}.json`;
      return [record, { file, value, text: canonicalText(value) }];
    }),
  );
}

/** Findings about reached records, at the file those get. */
export function movedBy(placed: ReadonlyMap<BookRecord, Placed>): (finding: Finding) => Finding {
  const recordAt = lookUpIn(placed.keys());
  const moved = ({ file, pointer, ...rest }: Place): Place => {
    const record = recordAt({ file, pointer });
    const to = record === undefined ? undefined : placed.get(record);
    if (record === undefined || to === undefined) return { file, pointer, ...rest };
    return { file: to.file, pointer: pointer.slice(record.pointer.length) };
  };
  return (finding) => ({
    ...finding,
    place: moved(finding.place),
    related: finding.related.map((one) => ({ ...one, place: moved(one.place) })),
  });
}

/** Finds the record a place lies in. */
export function lookUpIn(records: Iterable<BookRecord>): (place: Place) => BookRecord | undefined {
  const nameOf = (file: string, pointer: string) => `${file}\n${pointer}`;
  const byPlace = new Map([...records].map((record) => [nameOf(record.file, record.pointer), record]));
  // A record is a file, or a row of the one list of a file.
  return ({ file, pointer }) => byPlace.get(nameOf(file, "")) ?? byPlace.get(nameOf(file, headOf(pointer, 2)));
}

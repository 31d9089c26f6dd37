import { comparedLine, statementOf } from "../../model/comparison.ts";
import { isObject, type JsonObject } from "../../model/json.ts";
import type { Kind } from "../../model/kind.ts";
import { byCodePoint } from "../../model/order.ts";
import { digestOfTaken, originalsAmong, takenFrom } from "../../model/read-from.ts";
import { addressOf } from "../../model/record.ts";
import type { CarriedRecord } from "./carry.ts";

/**
 * Carried records with each comparison as far as it speaks of what comes along whole. Where a value of a record stays behind,
 * what is left of it was compared all the same; of a record that comes field by field the comparison stays behind.
 */
export function withComparisons(
  records: readonly CarriedRecord[],
  kinds: ReadonlyMap<string, Kind>,
): readonly CarriedRecord[] {
  const before = originalsAmong(records.map(({ from }) => from));
  const now = originalsAmong(records.map(({ from, value }) => ({ ...from, value })));
  const lines = new Map<string, [address: string, line: string][]>();
  for (const { from, value } of records) {
    const kind = kinds.get(from.kind);
    if (kind?.carry !== "always") continue;
    const old = takenFrom(from, kind, before);
    for (const taken of takenFrom({ ...from, value }, kind, now)) {
      const { id } = taken.original;
      const was = old.find(({ original }) => original.id === id);
      const stated = was === undefined ? undefined : statementOf(was.original).records.get(addressOf(from));
      if (was === undefined || stated === undefined) continue;
      const address = addressOf(from);
      const line = stated === digestOfTaken(was) ? comparedLine(from, taken) : `${stated} ${address}`;
      lines.set(id, [...(lines.get(id) ?? []), [address, line]]);
    }
  }
  return records.map((record) =>
    before.byId.get(record.from.id) === record.from
      ? { ...record, value: comparedWith(record.value, lines.get(record.from.id)) }
      : record,
  );
}

function comparedWith(
  value: JsonObject,
  lines: readonly (readonly [address: string, line: string])[] | undefined,
): JsonObject {
  const { transcription, ...others } = value;
  if (!isObject(transcription)) return value;
  if (lines === undefined) return others;
  const records = [...lines].sort(([a], [b]) => byCodePoint(a, b)).map(([, line]) => line);
  return { ...others, transcription: { ...transcription, records } };
}

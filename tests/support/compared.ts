import { linesByOriginal, statementOf } from "../../src/model/comparison.ts";
import type { Kind } from "../../src/model/kind.ts";
import { isObject } from "../../src/model/json.ts";
import { originalsAmong } from "../../src/model/read-from.ts";
import type { BookRecord } from "../../src/model/record.ts";

/** Records of which everything was compared again, as it is now, with each original that names who compared. */
export function comparedAnew(records: readonly BookRecord[], kinds: ReadonlyMap<string, Kind>): readonly BookRecord[] {
  const lines = linesByOriginal(records, kinds, originalsAmong(records));
  return records.map((record) => {
    const { transcription, sha256 } = record.value;
    if (record.kind !== "original" || statementOf(record).by === "" || !isObject(transcription)) return record;
    const now = { ...transcription, sha256: sha256 ?? "", records: lines.get(record.id) ?? [] };
    return { ...record, value: { ...record.value, transcription: now } };
  });
}

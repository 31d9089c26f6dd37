import { comparisonsOf, statementOf } from "../model/comparison.ts";
import { isList, isObject, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { originalsAmong } from "../model/read-from.ts";
import { type BookRecord, addressOf } from "../model/record.ts";
import type { Change } from "./overlay.ts";
import { said } from "./said.ts";
import { takesTheSame } from "./uncompared.ts";
import { addressesIn, citedKey } from "../model/finding-key.ts";

/**
 * Why a sheet may not change a record without being told to: somebody has answered for the values since. Empty where nobody
 * has. `after` is the record as it would be, `digest` that of the fields the maps write, as the book holds them.
 */
export function conflictsOf(
  records: readonly BookRecord[],
  mapName: string,
): (
  kind: Kind,
  record: BookRecord,
  after: JsonObject,
  changes: readonly Change[],
  digest: string,
) => readonly string[] {
  const cited = citations(records);
  const originals = originalsAmong(records);
  return (kind, record, after, changes, digest) => {
    if (changes.length === 0) return [];
    const { imported, signatures } = record.value;
    const reasons: string[] = [];
    const replaces = changes.some(({ before }) => before !== undefined);
    if (!isObject(imported)) {
      if (replaces) reasons.push("its values were typed, not imported");
    } else if (imported["map"] !== mapName) {
      if (replaces) reasons.push(`its values were imported by the map ${said(imported["map"])}`);
    } else if (imported["fields"] !== digest) reasons.push("its values were changed by hand since they were imported");
    for (const { original, state } of comparisonsOf(record, kind, originals)) {
      // A comparison that no longer stands for the record protects nothing.
      if ((state !== "compared" && state !== "alone") || takesTheSame(record, after, kind, original, originals))
        continue;
      const { by, date } = statementOf(original);
      reasons.push(`it was compared with original ${original.id} by ${by}${date === "" ? "" : ` on ${date}`}`);
    }
    const signed = isList(signatures) ? signatures.flatMap((one) => (isObject(one) ? [said(one["person"])] : [])) : [];
    if (signed.length > 0) reasons.push(`it was signed by ${signed.join(", ")}`);
    const by = cited.get(addressOf(record)) ?? [];
    if (by.length > 0) reasons.push(`an exception rests on it: ${by.join(", ")}`);
    return reasons;
  };
}

/** Exceptions by the records whose findings they answer. */
function citations(records: readonly BookRecord[]): ReadonlyMap<string, readonly string[]> {
  const cited = new Map<string, string[]>();
  for (const { kind, id, value } of records) {
    const { answers } = value;
    if (!isList(answers)) continue;
    for (const answer of answers) {
      if (!isObject(answer) || typeof answer["finding"] !== "string") continue;
      for (const address of addressesIn(citedKey(answer["finding"])))
        cited.set(address, [...(cited.get(address) ?? []), `${kind} ${id}`]);
    }
  }
  return cited;
}

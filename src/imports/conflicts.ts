import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import type { BookRecord } from "../model/record.ts";
import type { Change } from "./overlay.ts";
import { said } from "./said.ts";

/**
 * Why a sheet may not change a record without being told to: somebody has answered for the values since. Empty where nobody
 * has. `digest` is that of the fields the maps write, as the book holds them.
 */
export function conflictsOf(
  records: readonly BookRecord[],
  mapName: string,
): (record: BookRecord, changes: readonly Change[], digest: string) => readonly string[] {
  const cited = citations(records);
  return (record, changes, digest) => {
    if (changes.length === 0) return [];
    const { imported, transcription, signatures } = record.value;
    const reasons: string[] = [];
    const replaces = changes.some(({ before }) => before !== undefined);
    if (!isObject(imported)) {
      if (replaces) reasons.push("its values were typed, not imported");
    } else if (imported["map"] !== mapName) {
      if (replaces) reasons.push(`its values were imported by the map ${said(imported["map"])}`);
    } else if (imported["fields"] !== digest) reasons.push("its values were changed by hand since they were imported");
    const compared = comparedBy(transcription);
    if (compared !== undefined) reasons.push(`it was compared by ${compared}`);
    const signed = isList(signatures) ? signatures.flatMap((one) => (isObject(one) ? [said(one["person"])] : [])) : [];
    if (signed.length > 0) reasons.push(`it was signed by ${signed.join(", ")}`);
    const by = cited.get(`${record.kind}:${record.id}`) ?? [];
    if (by.length > 0) reasons.push(`an exception rests on it: ${by.join(", ")}`);
    return reasons;
  };
}

function comparedBy(transcription: Json | undefined): string | undefined {
  if (!isObject(transcription)) return undefined;
  const { comparedBy: by, date } = transcription;
  return typeof by === "string" ? `${by}${typeof date === "string" ? ` on ${date}` : ""}` : undefined;
}

/** A record without the comparison that was made of its former values. */
export function uncompared(value: JsonObject): JsonObject {
  const { transcription, ...others } = value;
  if (!isObject(transcription)) return value;
  const { comparedBy: _by, date: _date, ...rest } = transcription;
  return Object.keys(rest).length === 0
    ? others
    : Object.fromEntries(Object.entries(value).map(([name, one]) => [name, name === "transcription" ? rest : one]));
}

/** Exceptions by the records whose findings they answer. */
function citations(records: readonly BookRecord[]): ReadonlyMap<string, readonly string[]> {
  const cited = new Map<string, string[]>();
  for (const { kind, id, value } of records) {
    const { answers } = value;
    if (!isList(answers)) continue;
    for (const answer of answers) {
      if (!isObject(answer) || typeof answer["finding"] !== "string") continue;
      for (const part of answer["finding"].split("|")) {
        const address = /^[a-z][a-z-]*:[A-Z0-9][A-Z0-9.-]*/.exec(part)?.[0];
        if (address !== undefined) cited.set(address, [...(cited.get(address) ?? []), `${kind} ${id}`]);
      }
    }
  }
  return cited;
}

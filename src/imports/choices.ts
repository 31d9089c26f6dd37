import { isList } from "../model/json.ts";
import { byCodePoint } from "../model/order.ts";
import type { Field, Kind } from "../model/kind.ts";
import type { BookRecord } from "../model/record.ts";
import { rowName } from "../model/stable.ts";
import { kindText } from "../model/kind-text.ts";

/** A list to choose from is of use up to so many. */
const most = 2000;

/** What a link of a field may name in this book, as it is written: `W07`, `joint:L1`, `CRT-012#84613`, `WPS-03@2`. */
export function linkChoices(
  records: readonly BookRecord[],
  kinds: ReadonlyMap<string, Kind>,
): (field: Field) => readonly string[] {
  return ({ targets = [] }) => {
    const several = targets.length > 1;
    const all = targets.flatMap((target) => {
      const { kind: name, list, sign } = kindText(target);
      const field = list === "" ? undefined : kinds.get(name)?.fields.get(list);
      return records.flatMap((record) => {
        if (record.kind !== name) return [];
        const start = `${several ? `${name}:` : ""}${record.id}`;
        if (list === undefined || field === undefined) return [start];
        const rows = record.value[list];
        return isList(rows)
          ? rows.flatMap((row) => rowName(field, row) ?? []).map((row) => `${start}${sign}${row}`)
          : [];
      });
    });
    return all.length > most ? [] : [...new Set(all)].sort(byCodePoint);
  };
}

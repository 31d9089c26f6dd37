import { isList } from "../model/json.ts";
import { byCodePoint } from "../model/order.ts";
import type { Field, Kind } from "../model/kind.ts";
import type { BookRecord } from "../model/record.ts";
import { rowName } from "../model/stable.ts";
import { kindText } from "../model/kind-text.ts";
import type { LinkTarget } from "../model/graph.ts";
import { printTarget } from "../link/target.ts";

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
      const { kind, list, sign } = kindText(target);
      const field = list === "" ? undefined : kinds.get(kind)?.fields.get(list);
      return records.flatMap((record) => {
        if (record.kind !== kind) return [];
        const link = (inner: Pick<LinkTarget, "row" | "revision">) =>
          printTarget({ kind, id: record.id, ...inner }, several);
        if (field === undefined) return [link({})];
        const rows = record.value[list];
        return isList(rows)
          ? rows
              .flatMap((row) => rowName(field, row) ?? [])
              .map((name) => link(sign === "#" ? { row: name } : { revision: name }))
          : [];
      });
    });
    return all.length > most ? [] : [...new Set(all)].sort(byCodePoint);
  };
}

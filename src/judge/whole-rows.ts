import { canPrecede, parseDate } from "../model/dates.ts";
import { atPointer, stepsOf } from "../model/json.ts";
import { byCodePoint } from "../model/order.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import type { Field } from "../model/kind.ts";
import { rowName } from "../model/stable.ts";
import type { Absence, World } from "../reading/world.ts";
import { absenceKey } from "../reading/absent.ts";

/** A row of a list that its paper states whole (`x-whole-from`): a heat of a certificate. */
export interface WholeRow {
  readonly record: BookRecord;
  readonly pointer: string;
  readonly list: Field;
  /** Field of the record with the day from which the row is stated. */
  readonly from: string;
}

/** The row something absent lies in, where its paper states such rows whole; a record that is missing lies in none. */
export function rowOf({ kinds }: Pick<World, "kinds">, absence: Absence): WholeRow | undefined {
  const { owner, kind, target, short } = absence;
  if (owner === null || kind !== null || target !== null || short !== undefined) return undefined;
  const [pointer, name = ""] = /^\/([^/]+)\/\d+/.exec(owner.pointer) ?? [];
  const list = kinds.get(owner.record.kind)?.fields.get(name);
  if (pointer === undefined || list?.wholeFrom === undefined) return undefined;
  return { record: owner.record, pointer, list, from: list.wholeFrom };
}

/** Whether the paper of the row something lacks in is there: its day is stated, in no doubt, and not after the cut-off of the evidence. */
export function isStated(world: World, absence: Absence, cutOff: string): boolean {
  const row = rowOf(world, absence);
  if (row === undefined || world.ledger.doubts(addressOf(row.record, `/${row.from}`)).length > 0) return false;
  const written = row.record.value[row.from];
  const day = parseDate(typeof written === "string" ? written : "");
  const last = parseDate(cutOff);
  return day.ok && last.ok && canPrecede(day.date, last.date) === "yes";
}

/** All that a row lacks, as one absence; `due` tells it from what the same row owes at another milestone. */
export function allLacking(row: WholeRow, lacks: readonly Absence[], due: string): Absence {
  const { record, pointer } = row;
  const name = due === "now" ? "values" : `values at ${due}`;
  return {
    key: absenceKey({ record, pointer }, name),
    name,
    owner: { record, pointer },
    step: "",
    filters: "",
    kind: null,
    target: null,
    lacks: inOrder(row, lacks),
  };
}

/** As the paper has them: by field of the row, then by the choices of what tells the entries of a list apart, then by field of the entry. */
function inOrder({ record, list }: WholeRow, lacks: readonly Absence[]): readonly Absence[] {
  const orderOf = (fields: Field["fields"], name: string) => [...(fields?.keys() ?? [])].indexOf(name);
  const rank = ({ owner, step, filters }: Absence): Rank => {
    const [, , inner] = stepsOf(owner?.pointer ?? "");
    const entries = list.item?.fields?.get(inner ?? step);
    const choices = entries?.item?.fields?.get(entries.rowKey ?? "")?.options;
    const [, filtered = ""] = /"([^"]*)"/.exec(filters) ?? [];
    const row = entries === undefined ? undefined : rowName(entries, atPointer(record.value, owner?.pointer ?? ""));
    const entry = inner === undefined ? filtered : (row ?? "");
    return [
      orderOf(list.item?.fields, inner ?? step),
      choices?.indexOf(entry) ?? -1,
      entry,
      orderOf(entries?.item?.fields, step),
    ];
  };
  return lacks
    .map((one) => ({ one, by: rank(one) }))
    .sort(({ by: a }, { by: b }) => a[0] - b[0] || a[1] - b[1] || byCodePoint(a[2], b[2]) || a[3] - b[3])
    .map(({ one }) => one);
}

type Rank = readonly [field: number, choice: number, entry: string, inner: number];

import { createHash } from "node:crypto";
import { isList, isObject, pointerStep, type Json } from "../../src/model/json.ts";
import type { Field, Kind } from "../../src/model/kind.ts";
import { eachLeaf } from "../../src/model/leaves.ts";
import { addressOf, type Address, type BookRecord } from "../../src/model/record.ts";

/** How gravely a value is wrong: gross, what nobody may overlook; near, what a person reading it would hardly see. */
export type SlipClass = "gross" | "near";

/** A value of a record as somebody in a hurry would have entered it. */
export interface Slip {
  readonly record: BookRecord;
  readonly pointer: string;
  /** `part nominalThickness`, rows without their numbers: `weld-log runs[].date`. */
  readonly field: string;
  readonly how: string;
  readonly class: SlipClass;
  /** What stands there then; undefined: it is gone. */
  readonly to: Json | undefined;
  readonly was: Json;
}

type Wrong = readonly [how: string, of: SlipClass, to: Json | undefined];

/** Names a field of a kind, rows without their numbers. */
export const fieldName = (kind: string, pointer: string): string =>
  `${kind} ${pointer
    .slice(1)
    .replaceAll(/\/\d+(?=\/|$)/g, "[]")
    .replaceAll("/", ".")}`;

const hashOf = (text: string) => createHash("sha256").update(text).digest("hex");

/**
 * Believable slips of the records: at most `most` places of a field, chosen by their hash, and of each place all that may be
 * entered wrongly there. Fields that say why nothing reads them are left out, and counted.
 */
export function slipsOf(
  records: readonly BookRecord[],
  kinds: ReadonlyMap<string, Kind>,
  most: number,
): { readonly slips: readonly Slip[]; readonly unread: number } {
  const places = new Map<
    string,
    { readonly record: BookRecord; readonly pointer: string; readonly field: Field; readonly value: Json }[]
  >();
  const values = new Map<string, Set<string>>();
  const unread = new Set<string>();
  const note = (record: BookRecord, pointer: string, field: Field, value: Json) => {
    const name = fieldName(record.kind, pointer);
    if (field.unread !== undefined || left.has(pointer.split("/")[1] ?? "")) {
      unread.add(name);
      return;
    }
    places.set(name, [...(places.get(name) ?? []), { record, pointer, field, value }]);
    if (typeof value === "string") values.set(name, (values.get(name) ?? new Set()).add(value));
  };
  for (const record of records) {
    const kind = kinds.get(record.kind);
    if (kind === undefined || kind.derived) continue;
    eachLeaf(record, kind.fields, ({ pointer, field, value }) => {
      note(record, pointer, field, value);
    });
    for (const [pointer, list, field] of listsIn(record.value, kind.fields)) note(record, pointer, field, list);
  }
  const ids = new Map(
    [...kinds.keys()].map((kind) => [kind, records.filter((one) => one.kind === kind).map(({ id }) => id)]),
  );
  const slips = [...places].flatMap(([name, all]) =>
    [...all]
      .map((one) => ({ ...one, hash: hashOf(addressOf(one.record, one.pointer)) }))
      .sort((a, b) => (a.hash < b.hash ? -1 : 1))
      .slice(0, most)
      .flatMap(({ record, pointer, field, value }) =>
        wrongly(field, value, { own: [...(values.get(name) ?? [])].sort(), ids }).map(([how, of, to]): Slip => ({
          record,
          pointer,
          field: name,
          how,
          class: of,
          to,
          was: value,
        })),
      ),
  );
  return { slips, unread: unread.size };
}

/** What every record may have and no rule is about, and names: they have slips of their own kinds. */
const left: ReadonlySet<string> = new Set(["id", "remarks", "attachments", "imported", "source", "sources"]);

function* listsIn(
  value: Json,
  fields: ReadonlyMap<string, Field>,
  at = "",
): Generator<readonly [pointer: string, list: readonly Json[], field: Field]> {
  if (!isObject(value)) return;
  for (const [name, field] of fields) {
    const own = Object.hasOwn(value, name) ? value[name] : undefined;
    const pointer = at + pointerStep(name);
    if (isObject(own) && field.fields !== undefined) yield* listsIn(own, field.fields, pointer);
    if (!isList(own)) continue;
    const rows = field.item?.fields;
    if (rows === undefined) continue;
    if (own.length > 0) yield [pointer, own, field];
    for (const [index, row] of own.entries()) yield* listsIn(row, rows, `${pointer}/${index}`);
  }
}

interface Neighbours {
  /** Values that other records have in the same field. */
  readonly own: readonly string[];
  readonly ids: ReadonlyMap<string, readonly string[]>;
}

/** What may be entered in the place of a value. */
function wrongly(field: Field, value: Json, { own, ids }: Neighbours): readonly Wrong[] {
  if (isList(value))
    return [
      ["last row lost", "gross", value.length > 1 ? value.slice(0, -1) : undefined],
      ["last row twice", "gross", [...value, value.at(-1) ?? null]],
    ];
  if (typeof value === "boolean") return [["the other way round", "gross", !value]];
  if (typeof value === "number")
    return [
      ["ten times", "gross", value === 0 ? undefined : value * 10],
      ["one more", "near", value + 1],
    ];
  if (typeof value !== "string") return [];
  if (field.options !== undefined) {
    const next = field.options[(field.options.indexOf(value) + 1) % field.options.length];
    return next === undefined || next === value ? [] : [["next choice", "gross", next]];
  }
  if (field.type === "link") {
    const [, prefix = "", id = ""] = /^((?:[a-z-]+:)?)([^#@]+)/.exec(value) ?? [];
    const kind = prefix === "" ? (field.targets?.[0] ?? "").replace(/[#@].*$/, "") : prefix.slice(0, -1);
    const others = ids.get(kind) ?? [];
    const other = others[(others.indexOf(id) + 1) % Math.max(others.length, 1)];
    return other === undefined || other === id || /[#@]/.test(value)
      ? []
      : [["another record", "gross", prefix + other]];
  }
  if (field.type === "date")
    return [
      ["a month later", "gross", monthsLater(value, 1)],
      ["a month earlier", "gross", monthsLater(value, -1)],
    ];
  if (field.type === "quantity") return [...ofQuantity(value), ...neighbour(value, own)];
  return [...digits(value), ...neighbour(value, own)];
}

function ofQuantity(value: string): readonly Wrong[] {
  const [, sign = "", number = "", unit = ""] = /^([<>]?)(-?[0-9.]+)(.*)$/.exec(value) ?? [];
  if (number === "" || Number(number) === 0) return [];
  const scale = (by: number) => `${sign}${Number((Number(number) * by).toPrecision(12))}${unit}`;
  return [
    ["ten times", "gross", scale(10)],
    ["a tenth", "gross", scale(0.1)],
    ...unitSlips(`${sign}${number}`, unit),
    ...digits(value),
  ];
}

const otherUnits: Readonly<Record<string, string>> = {
  " bar": " MPa",
  " MPa": " bar",
  " mm": " cm",
  " °C": " K",
  " kg/h": " t/h",
  " kW": " MW",
  " l": " m³",
  " J": " kJ",
  " min": " h",
  " h": " min",
};

const unitSlips = (number: string, unit: string): readonly Wrong[] => {
  const other = otherUnits[unit];
  return other === undefined ? [] : [["another unit", "gross", number + other]];
};

/** One digit another, two digits swapped. */
function digits(value: string): readonly Wrong[] {
  const at = /\d(?!.*\d)/.exec(value)?.index;
  const one: readonly Wrong[] =
    at === undefined
      ? []
      : [["last digit", "near", `${value.slice(0, at)}${(Number(value[at]) + 1) % 10}${value.slice(at + 1)}`]];
  const pair = Array.from(value).findIndex(
    (sign, index) => /\d/.test(sign) && /\d/.test(value[index + 1] ?? "") && sign !== value[index + 1],
  );
  const swapped: readonly Wrong[] =
    pair < 0
      ? []
      : [
          [
            "digits swapped",
            "near",
            `${value.slice(0, pair)}${value[pair + 1] ?? ""}${value[pair] ?? ""}${value.slice(pair + 2)}`,
          ],
        ];
  return [...one, ...swapped];
}

const neighbour = (value: string, own: readonly string[]): readonly Wrong[] => {
  const other = own[(own.indexOf(value) + 1) % Math.max(own.length, 1)];
  return other === undefined || other === value ? [] : [["as another record has it", "near", other]];
};

/** The same day of another month, or the last one it has. */
function monthsLater(date: string, months: number): string {
  const [, year = "", month = "", day = "", rest = ""] = /^(\d{4})-(\d{2})-(\d{2})(.*)$/.exec(date) ?? [];
  const index = Number(year) * 12 + Number(month) - 1 + months;
  const [y, m] = [Math.floor(index / 12), (index % 12) + 1];
  const last = new Date(Date.UTC(y, m, 0)).getUTCDate();
  return `${y}-${String(m).padStart(2, "0")}-${String(Math.min(Number(day), last)).padStart(2, "0")}${rest}`;
}

/** Where a slip stands. */
export const addressOfSlip = ({ record, pointer }: Slip): Address => addressOf(record, pointer);

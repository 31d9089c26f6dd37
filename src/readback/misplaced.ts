import { addTo, grouped } from "../model/grouped.ts";
import { framesOf } from "./frames.ts";
import { homesIn, type Home } from "./homes.ts";
import type { Pages } from "./search.ts";
import { placesOf } from "./sheet.ts";
import { spotsOf, wordAt, wordsIn, type Spot } from "./spots.ts";
import type { Item } from "./template.ts";
import type { Label, Transcribed } from "./values.ts";
import type { Part } from "./wanted.ts";

/** What a record takes from some pages of an original. */
export interface Taken {
  readonly kind: string;
  readonly id: string;
  readonly values: readonly Transcribed[];
  readonly labels: () => readonly Label[];
  readonly on: Pages;
}

/** One thing to find of a value. */
class Sought implements Item {
  readonly taken: Taken;
  readonly label: Label;
  readonly index: number;
  readonly part: Part;
  /** Undefined of a label. */
  readonly value: Transcribed | undefined;
  private known: readonly Spot[] | undefined;

  constructor(taken: Taken, label: Label, index: number, part: Part, value?: Transcribed) {
    [this.taken, this.label, this.index, this.part, this.value] = [taken, label, index, part, value];
  }

  get spots(): readonly Spot[] {
    return (this.known ??= spotsOf(this.part, this.taken.on));
  }
}

/**
 * Values that stand on the pages, but in the places of others, with what stands in their own: a row of a table, or one form
 * among others, is found by its other values, and the column by the other rows. Says nothing of a value unless the place it should
 * have is proven, holds a figure that no value accounts for, and every place it does stand at is proven to be another's.
 */
export function misplaced(taken: readonly Taken[]): ReadonlyMap<Transcribed, string> {
  const values = taken.flatMap((one) => one.values.flatMap((value) => soughtOf(one, value, value)));
  const crowded = crowdedAmong(values);
  const found = new Map<Transcribed, string>();
  if (crowded.size === 0) return found;
  const crowdedRecords = new Set([...crowded].map((item) => item.taken));
  const all = [
    ...values,
    ...[...crowdedRecords].flatMap((one) => one.labels().flatMap((label) => soughtOf(one, label))),
  ];
  const groups = new Map<string, Map<string, Map<string, Sought>>>();
  for (const item of all)
    for (const { group, row, field } of framesOf(item.taken.kind, item.taken.id, item.label)) {
      const rows = groups.get(group) ?? new Map<string, Map<string, Sought>>();
      const items = rows.get(row) ?? new Map<string, Sought>();
      groups.set(group, rows.set(row, items.set(`${field} ${item.index}`, item)));
    }
  const homes = new Map<Item, Home[]>();
  const open = new Set(crowded);
  for (const group of groups.values()) {
    // What is in its place as a row of one table needs no other.
    if (![...group.values()].some((items) => [...items.values()].some((item) => open.has(item)))) continue;
    for (const [item, own] of homesIn(group))
      for (const home of own) {
        addTo(homes, item, home);
        if (home.own !== undefined) open.delete(item);
      }
  }
  const owners = claims(all, homes);
  for (const item of open) {
    const word = wordInPlaceOf(item, homes.get(item) ?? [], owners);
    if (item.value !== undefined && word !== undefined) found.set(item.value, word);
  }
  return found;
}

const soughtOf = (taken: Taken, label: Label, value?: Transcribed) =>
  label.parts.map((part, index) => new Sought(taken, label, index, part, value));

/** Figures that are sought more often than they stand there: only among these can one have the place of another. */
function crowdedAmong(all: readonly Sought[]): ReadonlySet<Sought> {
  const crowded = new Set<Sought>();
  const figures = all.filter(({ part }) => /\d/.test(part.first));
  for (const alike of grouped(figures, ({ part }) => part.first).values()) {
    if (alike.length === 1) continue;
    for (const item of alike) {
      // That a link leads somewhere is found by links.
      if (item.value === undefined || item.value.field.type === "link") continue;
      const others = alike.filter(({ taken }) => taken.on === item.taken.on || sharePage(taken.on, item.taken.on));
      const { length } = others;
      if (length > 1 && !standsOften(item, length) && item.spots.length < length) crowded.add(item);
    }
  }
  return crowded;
}

/** Whether it stands that often in its first form alone, which is soon found out. */
const standsOften = ({ part, taken }: Sought, times: number): boolean =>
  taken.on.sheets.reduce((sum, sheet) => sum + placesOf(sheet, part.first).length, 0) >= times;

const sharePage = (one: Pages, other: Pages) => one.sheets.some((sheet) => other.sheets.includes(sheet));

type Claims = ReadonlyMap<Spot["sheet"], ReadonlyMap<number, readonly Sought[]>>;

/** Whose each word of the sheets is: of what has its home there, or stands nowhere else. */
function claims(all: readonly Sought[], homes: ReadonlyMap<Item, readonly Home[]>): Claims {
  const spots = all.flatMap((item) => {
    const at = homes.get(item);
    const own = at === undefined ? (item.spots.length === 1 ? item.spots : []) : at.flatMap(({ own }) => own ?? []);
    return own.map((spot) => ({ item, spot }));
  });
  return new Map(
    [...grouped(spots, ({ spot }) => spot.sheet)].map(([sheet, on]) => [
      sheet,
      new Map(
        [...grouped(on, ({ spot }) => wordAt(sheet, spot.at))].map(([word, owned]) => [
          word,
          owned.map(({ item }) => item),
        ]),
      ),
    ]),
  );
}

function wordInPlaceOf(item: Sought, homes: readonly Home[], owners: Claims): string | undefined {
  const [home] = homes;
  if (home === undefined || item.spots.length === 0 || homes.some(({ own }) => own !== undefined)) return undefined;
  const taken = item.spots.every(({ sheet, at }) =>
    owners
      .get(sheet)
      ?.get(wordAt(sheet, at))
      ?.some((owner) => owner !== item),
  );
  if (!taken) return undefined;
  const words = wordsIn(home.box);
  const others = words.flatMap(({ at }) => owners.get(home.box.sheet)?.get(at) ?? []);
  if (others.some((owner) => !repeats(owner, item))) return undefined;
  const text = words.map((word) => word.text).join(" ");
  return /\d/.test(text) ? text : undefined;
}

/** Whether two are the same field of two rows of one record: what a paper prints once for several rows. */
const repeats = (one: Sought, other: Sought): boolean =>
  one.taken === other.taken &&
  one.index === other.index &&
  withoutRows(one.label.pointer) === withoutRows(other.label.pointer);

const withoutRows = (pointer: string) => pointer.replaceAll(/\/\d+(?=\/|$)/g, "/*");

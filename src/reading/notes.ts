import { type Address, type BookRecord, addressOf, inRecord, recordIn } from "../model/record.ts";
import type { World } from "./world.ts";

/**
 * What one application of a definition rests on, noted at the few places where the book is looked into, whatever trail
 * or reader it is looked into for: what is left out of a trail on purpose has been looked at all the same.
 */
export interface Page {
  /** Places of records that were read, led through or looked for in vain: pointers by the record's address. */
  readonly places: Map<Address, Set<string>>;
  /** Kinds of which all records were gone through. */
  readonly kinds: Set<string>;
  /** Links back that were followed: `backName` of each. */
  readonly back: Set<string>;
  /** Results by their `calculationKey`; undefined where there was none. */
  readonly results: Map<string, object | undefined>;
  /** Findings that doubted or disputed a place, by its address, as `doubtsAt` prints them; of most places there are none. */
  readonly doubts: Map<Address, string>;
  /** Findings that doubted a record or anything in it, by its address, where a whole record was asked about. */
  readonly within: Map<Address, string>;
}

/** The page that is being written on; none outside of an application, or where nobody will judge again. */
export interface Notebook {
  page: Page | null;
}

export const newPage = (): Page => ({
  places: new Map(),
  kinds: new Set(),
  back: new Set(),
  results: new Map(),
  doubts: new Map(),
  within: new Map(),
});

type Noting = Pick<World, "notes" | "ledger">;

const addresses = new WeakMap<BookRecord, Address>();

/** Address of a record, the same string each time: notes and outcomes keep it by the hundred thousand. */
export function keptAddress(record: BookRecord): Address {
  let name = addresses.get(record);
  if (name === undefined) addresses.set(record, (name = addressOf(record)));
  return name;
}

export function notePlace({ notes, ledger }: Noting, record: BookRecord, pointer: string): void {
  if (notes?.page != null) write(notes.page, ledger, keptAddress(record), pointer);
}

/** As `notePlace`, for a place known by its address. */
export function notePlaceAt({ notes, ledger }: Noting, address: Address): void {
  if (notes?.page == null) return;
  const record = recordIn(address);
  write(notes.page, ledger, record, address.slice(record.length));
}

function write({ places, doubts }: Page, ledger: World["ledger"], record: Address, pointer: string): void {
  let pointers = places.get(record);
  if (pointers === undefined) places.set(record, (pointers = new Set()));
  else if (pointers.has(pointer)) return;
  pointers.add(pointer);
  if (ledger.empty) return;
  const place = inRecord(record, pointer);
  const found = doubtsAt(ledger, place);
  if (found !== "") doubts.set(place, found);
}

/** Findings that doubt or dispute a place, as one text; "" for none. */
export function doubtsAt(ledger: World["ledger"], address: Address): string {
  const [doubts, disputes] = [ledger.doubts(address), ledger.disputes(address)];
  return doubts.length + disputes.length === 0 ? "" : `${doubts.join("\n")}\n\n${disputes.join("\n")}`;
}

export function noteKind({ notes }: Pick<World, "notes">, kind: string): void {
  notes?.page?.kinds.add(kind);
}

/** Names one field of one kind, for links back. */
export const fieldName = (kind: string, field: string): string => `${kind}:${field}`;

/** Names the links of one field of one kind that lead to an address. */
export const backName = (address: Address, kind: string, field: string): string =>
  `${address}|${fieldName(kind, field)}`;

export function noteBack({ notes }: Pick<World, "notes">, address: Address, kind: string, field: string): void {
  notes?.page?.back.add(backName(address, kind, field));
}

export function noteResult({ notes }: Pick<World, "notes">, key: string, result: object | undefined): void {
  notes?.page?.results.set(key, result);
}

export function noteWithin({ notes }: Pick<World, "notes">, record: Address, findings: readonly string[]): void {
  notes?.page?.within.set(record, findings.join("\n"));
}

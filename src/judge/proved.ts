import type { Done, JudgedBook } from "../model/book.ts";
import { atPointer } from "../model/json.ts";
import { addressOf, partsOfAddress, type Address, type BookRecord } from "../model/record.ts";
import { fieldOfPointer } from "../model/stable.ts";
import { supposer, type Supposed } from "./suppose.ts";

/** By how much a value is supposed to be wrong, to either side. */
export const slip = 0.1;

/** From which share of what it is held against an acceptance counts as easier to meet. */
export const bearing = 0.005;

export type Side = "low" | "high";

/**
 * How one value that calculations are done with is proved. confirmed: a slip to any side that would make an acceptance easier to
 * meet is objected to, by the definitions named · as stated: to these sides nothing objects, though an acceptance becomes easier
 * to meet · slight: no acceptance becomes easier to meet, and nothing objects.
 */
export type Proof =
  | { readonly state: "confirmed"; readonly by: readonly string[] }
  | { readonly state: "as stated"; readonly sides: readonly Side[] }
  | { readonly state: "slight" };

/** A quantity of a record that a calculation takes, with the symbol it enters by. */
export interface Taken {
  readonly symbol: string;
  readonly record: BookRecord;
  readonly pointer: string;
  readonly address: Address;
}

const known = new WeakMap<JudgedBook, ReadonlyMap<Address, Proof>>();

/**
 * For every quantity of a record that a calculation takes, by its address: whether anything else in the book would find it
 * wrong. That is tried, never stated: the value is made a tenth smaller and greater, and what read it is asked again. The
 * maker's sheets do not count: they repeat what they were made with. Found once for a judged book.
 */
export function proofsOf(judged: JudgedBook): ReadonlyMap<Address, Proof> {
  let proofs = known.get(judged);
  if (proofs === undefined) known.set(judged, (proofs = prove(judged)));
  return proofs;
}

function prove(judged: JudgedBook): ReadonlyMap<Address, Proof> {
  const suppose = supposer(judged);
  const proofs = new Map<Address, Proof>();
  for (const one of judged.computed) {
    if (one.state !== "done") continue;
    for (const { record, pointer, address } of takenBy(judged, one)) {
      if (proofs.has(address)) continue;
      const tried = (["low", "high"] as const).flatMap((side) => {
        const text = slipped(record, pointer, side);
        return text === undefined ? [] : [{ side, supposed: suppose(record, pointer, text) }];
      });
      if (tried.length > 0) proofs.set(address, proofOf(tried));
    }
  }
  return proofs;
}

/** The quantities of records that enter a calculation, those of its rows too. */
export function takenBy(
  { graph, definitions }: Pick<JudgedBook, "graph" | "definitions">,
  { inputs, reads, calculation }: Done,
): readonly Taken[] {
  const taken = (symbol: string, record: BookRecord | undefined, pointer: string): readonly Taken[] =>
    record !== undefined &&
    fieldOfPointer(definitions.kinds.get(record.kind)?.fields, record.value, pointer)?.type === "quantity" &&
    typeof atPointer(record.value, pointer) === "string"
      ? [{ symbol, record, pointer, address: addressOf(record, pointer) }]
      : [];
  return [...inputs].flatMap(([symbol, { origin, rows }]): readonly Taken[] => {
    if (calculation.inputs[symbol]?.options !== undefined) return [];
    if (origin?.type === "record") return taken(symbol, origin.record, origin.pointer);
    if (rows === undefined) return [];
    return [...(reads.get(symbol) ?? [])].flatMap((address) => {
      const { kind, id, pointer } = partsOfAddress(address);
      return taken(symbol, graph.byKind.get(kind)?.get(id), pointer);
    });
  });
}

const quantity = /^([<>]?)(-?[0-9]+(?:\.[0-9]+)?)( \S+)?$/;

/** The quantity that stands there, a tenth smaller or greater, as a record would write it; of nothing there is no tenth. */
function slipped(record: BookRecord, pointer: string, side: Side): string | undefined {
  const text = atPointer(record.value, pointer);
  const [, sign = "", digits, unit = ""] = (typeof text === "string" && quantity.exec(text)) || [];
  const value = Number(digits);
  if (digits === undefined || value === 0) return undefined;
  const other = value + (side === "high" ? 1 : -1) * Math.abs(value) * slip;
  return `${sign}${Number(other.toPrecision(9))}${unit}`;
}

type Tried = readonly { readonly side: Side; readonly supposed: Supposed }[];

function proofOf(tried: Tried): Proof {
  const easier = tried.filter(({ supposed }) => eases(supposed));
  const open = easier.filter(({ supposed }) => objectingTo(supposed).length === 0);
  if (open.length > 0) return { state: "as stated", sides: open.map(({ side }) => side) };
  const objecting = (easier.length > 0 ? easier : tried).flatMap(({ supposed }) => objectingTo(supposed));
  return objecting.length === 0 ? { state: "slight" } : { state: "confirmed", by: [...new Set(objecting)] };
}

/** What objects to a slip: what finds something, and calculations that come to no result with it. */
const objectingTo = ({ findings, changed }: Supposed): readonly string[] => [
  ...findings.map(({ rule }) => rule),
  ...changed.flatMap(({ was, is }) => (is === null ? [was.calculation.id] : [])),
];

const eases = ({ changed }: Supposed): boolean =>
  changed.some(({ was, is }) => {
    if (was.state !== "done" || is === null) return false;
    const before = marginsOf(was);
    return [...marginsOf(is)].some(
      ([name, margin]) => margin > (before.get(name) ?? Number.POSITIVE_INFINITY) + bearing,
    );
  });

/** What each acceptance has in hand, as a share of what it is held against. */
const marginsOf = ({ accept }: Done): ReadonlyMap<string, number> =>
  new Map(
    accept.map(({ acceptance: { left: name, relation, right: limit }, margin, left, right }) => [
      `${name} ${relation} ${limit}`,
      margin / Math.max(Math.abs(left), Math.abs(right), Number.MIN_VALUE),
    ]),
  );

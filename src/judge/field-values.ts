import type { Field, Kind, Sign } from "../model/kind.ts";
import { eachLeaf, type Leaf } from "../model/leaves.ts";
import { measure, parseQuantity, type Quantity } from "../model/quantity.ts";
import type { ValueProblem } from "../model/quantity-problem.ts";
import type { BookRecord } from "../model/record.ts";
import { swappedWith, type LowerEnd } from "./range-ends.ts";

/** What there is to say of a quantity as it stands. */
export type Odd =
  { readonly unreadable: ValueProblem } | { readonly sign: Sign; readonly quantity: Quantity } | "implausible";

/** Of a record the quantities that something is said of, all dates, and upper ends of ranges that lie below the lower. */
interface FieldValues {
  readonly kind: Kind;
  readonly odd: readonly { readonly leaf: Leaf; readonly text: string; readonly fault: Odd }[];
  readonly dates: readonly { readonly leaf: Leaf; readonly text: string }[];
  readonly swapped: readonly { readonly leaf: Leaf; readonly text: string; readonly lower: LowerEnd }[];
}

const read = new WeakMap<BookRecord, FieldValues>();

/** The values of a record as they read: that follows from the record alone. `keep`: it will be asked for again. */
export function valuesOf(record: BookRecord, kind: Kind, keep: boolean): FieldValues {
  const before = read.get(record);
  if (before !== undefined && before.kind === kind) return before;
  const odd: FieldValues["odd"][number][] = [];
  const dates: FieldValues["dates"][number][] = [];
  const swapped: FieldValues["swapped"][number][] = [];
  eachLeaf(record, kind.fields, (leaf) => {
    const { field, value: text } = leaf;
    if (typeof text !== "string") return;
    if (field.type === "date") dates.push({ leaf, text });
    const fault = field.type === "quantity" ? oddIn(field, text) : undefined;
    if (fault !== undefined) odd.push({ leaf, text, fault });
    const lower = swappedWith(leaf);
    if (lower !== undefined) swapped.push({ leaf, text, lower });
  });
  const values = { kind, odd, dates, swapped };
  if (keep) read.set(record, values);
  return values;
}

function oddIn(field: Field, text: string): Odd | undefined {
  const parsed = parseQuantity(text, wantedOf(field));
  if (!parsed.ok) return { unreadable: parsed.problem };
  const { quantity } = parsed;
  if (field.sign !== undefined && !hasSign(quantity.number, field.sign)) return { sign: field.sign, quantity };
  const range = rangeOf(field);
  if (range === undefined || quantity.sign !== "=") return undefined;
  const { low, high } = measure(quantity, range.unit);
  return low >= range.low && high <= range.high ? undefined : "implausible";
}

const hasSign = (value: number, sign: Sign): boolean => (sign === "positive" ? value > 0 : value >= 0);

const wantedOf = ({ unit = "any", difference }: Field) => ({ unit, ...(difference === true && { difference: true }) });

interface Range {
  readonly unit: string;
  readonly low: number;
  readonly high: number;
}

const ranges = new WeakMap<Field, Range | "none">();

/** Plausible range of a field, in its unit; read once for each field. */
function rangeOf(field: Field): Range | undefined {
  let range = ranges.get(field);
  if (range === undefined) ranges.set(field, (range = readRange(field) ?? "none"));
  return range === "none" ? undefined : range;
}

function readRange(field: Field): Range | undefined {
  const wanted = wantedOf(field);
  if (field.plausible === undefined || wanted.unit === "any") return undefined;
  const [low, high] = field.plausible.map((one) => parseQuantity(one, wanted));
  if (low?.ok !== true || high?.ok !== true) return undefined;
  return {
    unit: wanted.unit,
    low: measure(low.quantity, wanted.unit).low,
    high: measure(high.quantity, wanted.unit).high,
  };
}

import type { DateValue } from "./dates.ts";
import type { Json } from "./json.ts";
import type { Measure } from "./quantity.ts";
import type { Address } from "./record.ts";

/**
 * What a definition reads: a path and how its value is understood. `T` is what the definition's code gets.
 *
 * required: absent means *not judged*, and what is absent is owed · any: an empty list is fine ·
 * optional: the definition sees `undefined`.
 */
export interface Input<T> {
  readonly path: string;
  readonly need: Need;
  readonly many: boolean;
  readonly reading: Reading;
  /** Never present: carries the type only. */
  readonly value?: T;
}

export type Need = "required" | "any" | "optional";

export type Reading =
  | { readonly type: "text" }
  | { readonly type: "flag" }
  | { readonly type: "count" }
  | { readonly type: "date" }
  | { readonly type: "quantity"; readonly unit: string }
  | { readonly type: "exists" }
  | { readonly type: "table"; readonly table: string }
  | { readonly type: "thing"; readonly inputs: Inputs };

export type LookUp = (...keys: readonly (string | Measure)[]) => Row;

/** The cells of one row of a table, by column. Undefined, or none: the row states nothing there. */
export interface Row {
  text(column: string): string | undefined;
  texts(column: string): readonly string[];
  /** In the unit of the column. */
  quantity(column: string): Measure | undefined;
}

export type Inputs = Readonly<Record<string, Input<unknown>>>;

/** The values a definition's code gets for its inputs. Reading a property is what marks its place as read. */
export type Values<I extends Inputs> = { readonly [K in keyof I]: I[K] extends Input<infer T> ? T : never };

/** A row or a record an input leads to: its own inputs, and `$`, which names it in messages and places. */
export type Thing<I extends Inputs> = Values<I> & { readonly $: Handle };

/** What identifies a thing in a message. */
export interface Handle {
  /** `kind:id` of the record, followed by the pointer of a row; empty of what stands in no record, as a row of a table. */
  readonly address: Address | "";
  readonly kind: string;
  /** "WQ-12", of a row "CRT-012#84613": for keys and comparisons. */
  readonly id: string;
  /** As people say it: "WQ-12", "CRT-012, row 84613", "WPS-04 revision 1". */
  readonly name: string;
}

export const text = (path: string): Input<string> => ({
  path,
  need: "required",
  many: false,
  reading: { type: "text" },
});
export const flag = (path: string): Input<boolean> => ({
  path,
  need: "required",
  many: false,
  reading: { type: "flag" },
});
export const count = (path: string): Input<number> => ({
  path,
  need: "required",
  many: false,
  reading: { type: "count" },
});
export const date = (path: string): Input<DateValue> => ({
  path,
  need: "required",
  many: false,
  reading: { type: "date" },
});
export const quantity = (path: string, unit: string): Input<Measure> => ({
  path,
  need: "required",
  many: false,
  reading: { type: "quantity", unit },
});
/** Whether the path leads anywhere; never absent itself. */
export const exists = (path: string): Input<boolean> => ({
  path,
  need: "any",
  many: false,
  reading: { type: "exists" },
});
/**
 * A table, for a definition that asks it with keys of its own, in their order: a text, or a measure in the unit of the key.
 * Where no row answers, the definition is not judged.
 */
export const table = (id: string): Input<LookUp> => ({
  path: `table(${id})`,
  need: "any",
  many: false,
  reading: { type: "table", table: id },
});
export const thing = <I extends Inputs>(path: string, inputs: I): Input<Thing<I>> => ({
  path,
  need: "required",
  many: false,
  reading: { type: "thing", inputs },
});
export const things = <I extends Inputs>(path: string, inputs: I): Input<readonly Thing<I>[]> =>
  list(thing(path, inputs));

/** All values the path leads to; an empty list counts as absent. */
export const list = <T>(input: Input<T>): Input<readonly T[]> => ({
  path: input.path,
  need: input.need,
  many: true,
  reading: input.reading,
});
/** As `list`, but an empty list is fine. */
export const anyOf = <T>(input: Input<readonly T[]>): Input<readonly T[]> => ({ ...input, need: "any" });
export const optional = <T>(input: Input<T>): Input<T | undefined> => ({
  path: input.path,
  need: "optional",
  many: input.many,
  reading: input.reading,
});

/** When a definition applies: every condition must hold. Reading an absent or accused place is *not judged*, never false. */
export interface Condition {
  readonly path: string;
  readonly equals?: Json | readonly Json[];
  readonly exists?: boolean;
}

/**
 * Values for a definition's inputs as they would stand in records (quantities and dates as text): what the examples
 * of definitions are written in.
 */
export type Given<I extends Inputs> = { readonly [K in keyof I]?: GivenValue<I[K]> };
type GivenValue<T> = T extends Input<infer V> ? GivenOf<V> : never;
type GivenOf<V> = V extends LookUp
  ? never
  : V extends Measure
    ? string
    : V extends DateValue
      ? string
      : V extends readonly (infer E)[]
        ? readonly GivenOf<E>[]
        : V extends { readonly $: Handle }
          ? { readonly [K in keyof Omit<V, "$">]?: GivenOf<V[K]> } & { readonly $?: string }
          : V;

import type { Address, BookRecord } from "./record.ts";

/** Where a link leads. `row` and `revision` name an object inside the target record. */
export interface LinkTarget {
  readonly kind: string;
  readonly id: string;
  readonly row?: string;
  readonly revision?: string;
}

/** One link as written in a record. */
export interface Link {
  readonly from: BookRecord;
  /** Pointer of the link inside its record. */
  readonly pointer: string;
  /** The same as a path of the kind: `rows[].joint`. */
  readonly path: string;
  readonly text: string;
  readonly target: LinkTarget | null;
  /**
   * found: leads to `to` · absent: well formed, no such record · broken: malformed, an absent row of a present record,
   * or written almost like an existing id (a finding says which).
   */
  readonly state: "found" | "absent" | "broken";
  readonly to?: BookRecord;
  /** Pointer of the row or revision inside `to`; "" for the whole record. */
  readonly toPointer?: string;
}

/** All records and links of a book. Nothing in it is changed after linking. */
export interface Graph {
  readonly records: readonly BookRecord[];
  /** By kind, then id as written; kinds in code-point order. */
  readonly byKind: ReadonlyMap<string, ReadonlyMap<string, BookRecord>>;
  readonly links: readonly Link[];
  /** Links written in a record, by pointer. */
  readonly out: ReadonlyMap<BookRecord, ReadonlyMap<string, Link>>;
  /** Found links by the address they lead to (record, or record and row pointer). */
  readonly back: ReadonlyMap<Address, readonly Link[]>;
  /** Links to records that do not exist, by `kind:id`. */
  readonly absent: ReadonlyMap<Address, readonly Link[]>;
}

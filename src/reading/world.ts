import type { FindingKey } from "../model/finding-key.ts";
import type { Basis } from "../model/basis.ts";
import type { Done } from "../model/book.ts";
import type { Definitions } from "../model/definitions.ts";
import type { Graph } from "../model/graph.ts";
import type { Kind } from "../model/kind.ts";
import type { Address, BookRecord } from "../model/record.ts";
import type { Table } from "../model/table.ts";
import type { Ledger } from "./ledger.ts";
import type { Trail } from "./trail.ts";
import type { Notes } from "./visits.ts";

/** A parameter of the profile in force. */
export interface ParameterInForce {
  readonly value: string;
  readonly basis: Basis;
  readonly overridden: boolean;
  /** Places of the book's own record that decide it. */
  readonly places?: readonly Address[];
}

/** What paths are followed in: everything known of the book while it is being judged. */
export interface World {
  readonly graph: Graph;
  readonly definitions: Definitions;
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly parameters: ReadonlyMap<string, ParameterInForce>;
  readonly tables: ReadonlyMap<string, Table>;
  /** Records that replace a table, by the table's name. */
  readonly ownTables?: ReadonlyMap<string, readonly BookRecord[]>;
  readonly ledger: Ledger;
  /** Calculations done so far, by `id` and address of their subject. */
  readonly computed: Map<string, Done | Pending>;
  /** Where it is noted what each definition rests on, if the book may be judged again. */
  readonly notes?: Notes;
}

/** A calculation that could not be done, or not wholly: whatever reads what is missing waits for the same. */
export interface Pending {
  readonly pending: true;
  readonly findings: readonly FindingKey[];
  readonly absences: readonly Absence[];
  readonly notApplicable: boolean;
  /** The results that do not rest on what it waits for. */
  readonly known?: Done;
  /** What stands in the way of each input, by its symbol. */
  readonly open: ReadonlyMap<string, Pick<Trail, "doubts" | "absences">>;
}

/**
 * Something that is not there. The key says what is missing, whoever wants it: the record or row where the missing
 * step starts and that step, or the target of a link.
 */
export interface Absence {
  readonly key: string;
  /** What is missing in the words of a finding's key: kinds, fields and values, no path. */
  readonly name: string;
  /** Where the missing step starts; null for the book itself. */
  readonly owner: { readonly record: BookRecord; readonly pointer: string } | null;
  /** The step as it is written in paths, without its filters. */
  readonly step: string;
  readonly filters: string;
  /** Kind that is missing, for a link or a step back. */
  readonly kind: string | null;
  /** `kind:id` when a link names the missing record. */
  readonly target: Address | null;
  /** Some are there, but fewer than the register asks for. */
  readonly short?: { readonly found: readonly BookRecord[]; readonly atLeast: number };
  /** All that one row of a paper lacks, which is one absence: what it lacks, in the order it is said. */
  readonly lacks?: readonly Absence[];
}

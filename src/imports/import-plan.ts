import type { JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import type { BookRecord } from "../model/record.ts";
import type { Workbook } from "../sheets/cells.ts";
import type { ImportFault } from "./faults.ts";
import type { SheetMap } from "./map.ts";
import type { Change } from "./overlay.ts";

/** What an import is made of. */
export interface ImportTask {
  readonly workbook: Workbook;
  /** Name and SHA-256 of the sheet's file. */
  readonly file: string;
  readonly sha256: string;
  readonly maps: readonly SheetMap[];
  /** Name of the maps' file, which records remember. */
  readonly mapName: string;
  readonly records: readonly BookRecord[];
  readonly kinds: ReadonlyMap<string, Kind>;
}

/** What would become of the rows of a sheet. */
export interface ImportPlan {
  /** By kind and id. */
  readonly records: readonly PlannedRecord[];
  /** Records of an earlier import by these maps that no row is about any more; none while that cannot be told. */
  readonly gone: readonly BookRecord[];
  /** Sheets that are not read, and rows whose id cannot be: while there are any, what is gone cannot be told. */
  readonly nameless: readonly Nameless[];
  readonly faults: readonly ImportFault[];
  readonly notes: readonly ImportFault[];
  readonly skipped: readonly LeftOut[];
  /** Rows that were read. */
  readonly rows: number;
}

/** Rows of a sheet whose id cannot be read; of a sheet that is not read at all, none. */
export interface Nameless {
  readonly sheet: string;
  readonly rows: readonly number[];
}

/** Rows that become nothing. */
export interface LeftOut {
  readonly sheet: string;
  readonly rows: readonly number[];
  readonly why: string;
}

export interface PlannedRecord {
  readonly kind: Kind;
  readonly id: string;
  readonly sheet: string;
  readonly rows: readonly number[];
  readonly state: "new" | "changed" | "unchanged" | "conflict";
  readonly changes: readonly Change[];
  /** Why it is a conflict. */
  readonly conflicts: readonly string[];
  /** Values and rows of lists that an earlier import wrote, and the sheet no longer has. They stay. */
  readonly left: readonly string[];
  readonly before?: BookRecord;
  /** The record as it would be written. */
  readonly value: JsonObject;
}

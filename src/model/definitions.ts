import type { Basis } from "./basis.ts";
import type { Calculation } from "./calculation.ts";
import type { Closer } from "./closer.ts";
import type { Fact } from "./fact.ts";
import type { Severity } from "./finding.ts";
import type { Kind } from "./kind.ts";
import type { Profile } from "./profile.ts";
import type { Register } from "./requirement.ts";
import type { Rule } from "./rule.ts";
import type { Scope } from "./scope.ts";
import type { Table } from "./table.ts";

/** Everything a book is judged with. Stages get it as an argument and name none of its members. */
export interface Definitions {
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly calculations: readonly Calculation[];
  readonly rules: readonly Rule[];
  /** Rules of the list that these are a part of: none of them is judged, but what they are owed is owed. */
  readonly unjudged?: readonly Rule[];
  readonly facts: readonly Fact[];
  /** What may close a rejected result, as the schemas name it. */
  readonly closers?: readonly Closer[];
  readonly registers: readonly Register[];
  /** What definitions belong to, and registers are made of; without any, all are in force. */
  readonly scopes?: readonly Scope[];
  /** Those of every scope, where these are the ones in force for a book. */
  readonly whole?: Definitions;
  readonly profiles: readonly Profile[];
  readonly tables: readonly Table[];
}

/** A check that is built into the tool (files, schemas, links, exceptions): listed beside the rules. */
export interface BuiltIn {
  readonly id: string;
  readonly title: string;
  readonly severity: Severity;
  readonly basis: Basis;
  /** Fields whose values it judges, of one kind or of several. */
  readonly reads?: readonly FieldsRead[];
}

export interface FieldsRead {
  readonly kinds: readonly string[] | "any";
  readonly paths: readonly string[];
}

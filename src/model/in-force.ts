import type { Definitions } from "./definitions.ts";
import type { Scope } from "./scope.ts";

/** What of all definitions a book of one register is judged by, and what of them is out of force there. */
export interface InForce {
  /** Definitions of the scopes in force; `whole` are all. */
  readonly definitions: Definitions;
  readonly scopes: ReadonlySet<string>;
  /** Scopes that are not in force. */
  readonly out: readonly Scope[];
  /** Parameters and tables that only definitions of such scopes read, each with these scopes. */
  readonly outParameters: ReadonlyMap<string, readonly Scope[]>;
  readonly outTables: ReadonlyMap<string, readonly Scope[]>;
}

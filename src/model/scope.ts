import type { Kind } from "./kind.ts";
import type { Register } from "./requirement.ts";
import { kindIn } from "./kind-text.ts";

/**
 * A field of definitions that are in force together: what is asked of steam, of fired equipment, of tubes in plates. A
 * register is a set of scopes; a book is judged by those of its register and by no other.
 */
export interface Scope {
  readonly id: string;
  /** "Fired equipment", as it is said to people. */
  readonly title: string;
  /** Scopes without which this one cannot be in force. */
  readonly needs: readonly string[];
  /** What in a book shows that it is needed; records of a kind of this scope always do. */
  readonly signs: readonly Sign[];
}

/** A field of a kind that is stated at all, or that says one of these values. */
export interface Sign {
  readonly kind: string;
  readonly path: string;
  readonly values?: readonly string[];
}

/** Scope of what names none and is of no kind that names one. */
export const generalScope = "general";

/** Scope of a definition: its own, or that of the kind it is about. */
export function scopeOf(
  kinds: ReadonlyMap<string, Kind>,
  { scope, kind }: { readonly scope?: string; readonly kind?: string },
): string {
  return scope ?? kinds.get(kindIn(kind ?? ""))?.scope ?? generalScope;
}

/** A scope with all it needs. */
export function withNeeded(scopes: readonly Scope[], names: readonly string[]): ReadonlySet<string> {
  const found = new Set<string>();
  const take = (name: string): void => {
    if (found.has(name)) return;
    found.add(name);
    scopes.find(({ id }) => id === name)?.needs.forEach(take);
  };
  [generalScope, ...names].forEach(take);
  return found;
}

/** Scopes of a register. None named: all, since nothing may be left out by silence. */
export function scopesOf(scopes: readonly Scope[], register: Register | undefined): ReadonlySet<string> {
  return withNeeded(scopes, register?.scopes ?? scopes.map(({ id }) => id));
}

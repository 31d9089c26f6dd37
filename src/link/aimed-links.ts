import type { LinkTarget } from "../model/graph.ts";
import type { Kind } from "../model/kind.ts";
import type { BookRecord } from "../model/record.ts";
import { parseTarget } from "./target.ts";
import { writtenLinks, type WrittenLink } from "./walk-links.ts";

/** A link with what it names, or with what was expected there. */
export interface AimedLink extends WrittenLink {
  readonly target: LinkTarget | { readonly expected: string };
}

const known = new WeakMap<BookRecord, { readonly kind: Kind; readonly links: readonly AimedLink[] }>();

/** The links of a record in the order of its schema, each read once: what a book reaches is asked before it is linked. */
export function aimedLinks(record: BookRecord, kind: Kind): readonly AimedLink[] {
  const before = known.get(record);
  if (before?.kind === kind) return before.links;
  const links = Array.from(writtenLinks(record, kind), (one) => ({
    target: parseTarget(one.text, one.field.targets ?? []),
    ...one,
  }));
  known.set(record, { kind, links });
  return links;
}

/** Forgets the links of a record, which nobody will ask for again. */
export const forgetAimed = (record: BookRecord): void => void known.delete(record);

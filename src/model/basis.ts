/** Where a rule, limit, formula or value comes from; printed wherever the value is printed, by `describeBasis`. */
export type Basis =
  | { readonly class: "published"; readonly document: string; readonly edition?: string; readonly clause?: string }
  | { readonly class: "excerpt seen"; readonly document: string; readonly edition?: string; readonly part: string }
  | { readonly class: "common practice"; readonly what: string }
  | { readonly class: "from memory"; readonly document: string; readonly edition?: string; readonly topic?: string }
  | {
      readonly class: "user table";
      readonly standard: string;
      readonly edition: string;
      readonly checkedBy: string;
      readonly date: string;
    }
  | { readonly class: "contract"; readonly reference: string }
  | { readonly class: "derived"; readonly from: string }
  | { readonly class: "own choice"; readonly reason: string };

export type BasisClass = Basis["class"];

const verified: ReadonlySet<BasisClass> = new Set(["published", "user table", "contract", "derived"]);

/** Whether a book that asks for verified bases accepts this one. */
export function isVerified(basis: Basis): boolean {
  return verified.has(basis.class);
}

const joined = (...parts: readonly (string | undefined)[]) =>
  parts.filter((part) => part !== undefined && part !== "").join(", ");

const named = (document: string, edition: string | undefined) =>
  edition === undefined ? document : `${document}:${edition}`;

/** One line for people: what the basis is and, in brackets, its class. */
export function describeBasis(basis: Basis): string {
  switch (basis.class) {
    case "published":
      return `${joined(named(basis.document, basis.edition), basis.clause)} (published)`;
    case "excerpt seen":
      return `${joined(named(basis.document, basis.edition), basis.part)} (excerpt seen)`;
    case "common practice":
      return `${basis.what} (common practice)`;
    case "from memory":
      return `${joined(named(basis.document, basis.edition), basis.topic)} (from memory)`;
    case "user table":
      return `${named(basis.standard, basis.edition)}, checked by ${basis.checkedBy} on ${basis.date} (user table)`;
    case "contract":
      return `${basis.reference} (contract)`;
    case "derived":
      return `${basis.from} (derived)`;
    case "own choice":
      return `${basis.reason} (own choice)`;
  }
}

export const published = (document: string, edition?: string, clause?: string): Basis => ({
  class: "published",
  document,
  ...(edition !== undefined && { edition }),
  ...(clause !== undefined && { clause }),
});
export const fromMemory = (document: string, edition?: string, topic?: string): Basis => ({
  class: "from memory",
  document,
  ...(edition !== undefined && { edition }),
  ...(topic !== undefined && { topic }),
});
export const excerptSeen = (document: string, part: string, edition?: string): Basis => ({
  class: "excerpt seen",
  document,
  part,
  ...(edition !== undefined && { edition }),
});
export const commonPractice = (what: string): Basis => ({ class: "common practice", what });
export const derivedFrom = (from: string): Basis => ({ class: "derived", from });
export const ownChoice = (reason: string): Basis => ({ class: "own choice", reason });

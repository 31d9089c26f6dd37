import { describeBasis, isVerified, ownChoice, type Basis } from "../model/basis.ts";
import type { BuiltIn, Definitions } from "../model/definitions.ts";
import type { Outcome } from "../model/finding.ts";
import type { BookRecord } from "../model/record.ts";
import type { Requirement } from "../model/requirement.ts";
import { nameOfClaim } from "../model/claim.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { keyOf } from "../model/finding-key.ts";
import { definitionOf } from "../model/outcome-name.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";

export const verifiedRules: readonly BuiltIn[] = [
  {
    id: "basis-verified",
    title: "Where the book asks for it, every value and limit rests on a verified basis",
    severity: "gap",
    reads: [{ kinds: ["book"], paths: ["requireVerifiedBasis"] }],
    basis: ownChoice("the book asks for verified bases: published, user table, contract or derived"),
  },
];

/**
 * In a book that asks for verified bases: one gap for each definition that gave a verdict, and for each value of the
 * profile or of a table, that rests on less. What is built in is exempt.
 */
export function checkBases(
  court: Court,
  book: BookRecord,
  definitions: Definitions,
  requirements: readonly Requirement[],
  outcomes: readonly Outcome[],
): void {
  if (book.value["requireVerifiedBasis"] !== true) return;
  const judged = new Set<string>();
  for (const { definition, verdict } of outcomes)
    if (verdict === "passed" || verdict === "computed" || verdict === "failed") judged.add(definitionOf(definition).id);
  const inUse = [
    ...basesOf(definitions, requirements).filter(({ id }) => judged.has(id)),
    ...[...court.used].map(([name, basis]) => ({ name, basis })),
  ];
  const at = locate(court.world, book, "/requireVerifiedBasis");
  for (const { name, basis } of inUse) {
    if (isVerified(basis)) continue;
    const finding = newFinding(finderOf(verifiedRules, "basis-verified"), at, {
      key: keyOf("basis-verified", book, name),
      verdict: "not judged",
      message: `"${name}" rests on ${describeBasis(basis)}`,
      why: "the book asks for verified bases: published, user table, contract or derived",
      hint: "enter the value from the standard itself as a reference table or an override, or record a waiver",
      basis,
      owner: "design",
      about: `${name} ${describeBasis(basis)}`,
    });
    addFinding(court, finding);
  }
}

interface Resting {
  readonly id: string;
  readonly name: string;
  readonly basis: Basis;
}

/** Every basis a definition states, with what states it. */
function basesOf(definitions: Definitions, requirements: readonly Requirement[]): readonly Resting[] {
  const own = (sort: string, list: readonly { readonly id: string; readonly basis: Basis }[]) =>
    list.map(({ id, basis }) => ({ id, name: `${sort} ${id}`, basis }));
  const inner = definitions.calculations.flatMap(({ id, steps, limits, accept, functions = [], crossCheck }) => [
    ...[
      ...steps.map(({ symbol, basis }) => ({ name: symbol, basis })),
      ...limits.map((one) => ({ name: `limit ${nameOfClaim(one)}`, basis: one.basis })),
      ...accept.map((one) => ({ name: nameOfClaim(one), basis: one.basis })),
    ].flatMap(({ name, basis }) => (basis === undefined ? [] : [{ id, name: `calculation ${id}, ${name}`, basis }])),
    ...functions.map(({ name, basis }) => ({ id, name: `calculation ${id}, function ${name}`, basis })),
    ...(crossCheck === undefined ? [] : [{ id, name: `calculation ${id}, second method`, basis: crossCheck.basis }]),
  ]);
  return [
    ...own("rule", definitions.rules),
    ...own("calculation", definitions.calculations),
    ...inner,
    ...own("fact", definitions.facts),
    ...own("requirement", requirements),
  ];
}

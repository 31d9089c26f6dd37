import type { JudgedBook } from "../model/book.ts";
import type { Outcome } from "../model/finding.ts";
import { registerOf } from "../model/requirement.ts";
import { kindsOfBook } from "./explain-fields.ts";
import { milestonesExplained, ownersExplained } from "./explained-words.ts";
import type { Explained } from "./explained.ts";
import { definitionOf } from "../model/outcome-name.ts";

/**
 * What can apply to a book: its own register with the scopes it is judged by, its own profile, of kinds the fields it has use for, and of rows, rules and
 * calculations those that were not found not to apply to everything it holds. What it holds nothing of yet stays: nobody can say.
 */
export function ofBook(all: Explained, judged: JudgedBook): Explained {
  const register = registerOf(judged.book.value["register"], judged.definitions.registers);
  const own = new Set((register?.requirements ?? []).map(({ id }) => id));
  const applies = applying(judged.outcomes);
  const { definitions, inForce } = judged;
  const ofScope = new Set(
    [...definitions.rules, ...definitions.calculations, ...definitions.facts, ...(register?.requirements ?? [])].map(
      ({ id }) => id,
    ),
  );
  const keep = <T extends { readonly id: string }>(list: readonly T[]) =>
    list.filter(({ id }) => ofScope.has(id) && applies(id));
  const isOut = new Set(inForce.out.map(({ id }) => id));
  const kindOfBook = kindsOfBook(judged, register);
  // Fields are told apart as the objects they are: those the book was judged with.
  const held = (name: string) => (judged.graph.byKind.get(name)?.size ?? 0) > 0;
  const ofUse = all.kinds.filter(({ name, scope = "" }) => held(name) || !isOut.has(scope));
  const kinds = ofUse.map((kind) => kindOfBook(judged.definitions.kinds.get(kind.name) ?? kind));
  const rules = keep(all.rules);
  const calculations = keep(all.calculations);
  const named = {
    kinds: new Map(kinds.map((kind) => [kind.name, kind])),
    registers: register === undefined ? [] : [register],
    rules,
    calculations,
  };
  return {
    ...all,
    kinds,
    calculations,
    rules,
    facts: keep(all.facts),
    requirements: keep(all.requirements.filter(({ id }) => own.has(id))),
    scopes: all.scopes.filter(({ id }) => !isOut.has(id)),
    tables: all.tables.filter(({ id }) => !inForce.outTables.has(id)),
    registers: all.registers.filter(({ id }) => id === register?.id),
    profiles: all.profiles.filter(({ id }) => id === judged.profile),
    parameters: all.parameters
      .filter(({ id }) => !inForce.outParameters.has(id))
      .map((one) => ({
        ...one,
        values: one.values.filter(({ profile }) => profile === judged.profile),
      })),
    milestones: milestonesExplained(named),
    owners: ownersExplained(named),
  };
}

function applying(outcomes: readonly Outcome[]): (id: string) => boolean {
  const judged = new Map<string, boolean>();
  for (const { definition, verdict } of outcomes) {
    const id = definitionOf(definition).id;
    judged.set(id, (judged.get(id) ?? false) || verdict !== "not applicable");
  }
  return (id) => judged.get(id) ?? true;
}

import { addFinding } from "../court/entries.ts";
import { locate, type Court } from "../court/court.ts";
import { sheetKind } from "../compute/adoption.ts";
import { ownChoice } from "../model/basis.ts";
import type { BuiltIn, Definitions } from "../model/definitions.ts";
import type { Graph } from "../model/graph.ts";
import type { InForce } from "../model/in-force.ts";
import { atPointer, isList, isObject, type Json } from "../model/json.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import type { Register } from "../model/requirement.ts";
import { scopesOf, withNeeded, type Scope } from "../model/scope.ts";
import { placeWords } from "../model/words.ts";
import { textOf } from "../reading/own-rows.ts";
import { inForceFor } from "../plan/narrow.ts";
import { scopeOfCalculation } from "../plan/uses.ts";
import { keyOf } from "../model/finding-key.ts";
import { newFinding } from "../model/new-finding.ts";

const inForce = {
  id: "scope-in-force",
  title: "What the book is about is in the scope of its register",
  severity: "nonconformity",
  basis: ownChoice("a register for something else asks for too little and judges too little, and nobody notices"),
} as const satisfies BuiltIn;

export const scopeRules: readonly BuiltIn[] = [inForce];

/** Something in the book that a scope out of force is for. */
interface Shown {
  readonly record: BookRecord;
  readonly pointer: string;
  /** What of it shows the scope: `type "such"`; empty: that it is there. */
  readonly says: string;
  /** It only names something of the scope, and is itself what may be wrong. */
  readonly names?: true;
}

/** So many signs of a scope are named one by one. */
const named = 6;

/** What the book shows of each scope that its register leaves out. */
export type Left = ReadonlyMap<Scope, readonly Shown[]>;

/**
 * What a book is judged by: the scopes of its register, and those of which it records anything, so that a wrong register
 * leaves no rule out; with what it shows of the scopes that its register leaves out.
 */
export function forceOf(
  graph: Graph,
  book: BookRecord,
  all: Definitions,
  register: Register | undefined,
): { readonly force: InForce; readonly left: Left } {
  const { scopes = [] } = all;
  const own = scopesOf(scopes, register);
  const asked = inForceFor(all, own);
  const recorded = asked.out.filter((scope) => recordedOf(graph, all, scope).length > 0);
  const names = recorded.map(({ id }) => id);
  const force = inForceFor(all, new Set([...own, ...withNeeded(scopes, names)]));
  // Where the equipment shows a scope, sheets and parameters of it are what they should be.
  const left = new Map(
    asked.out.map((scope) => [
      scope,
      force.scopes.has(scope.id) ? recordedOf(graph, all, scope) : namedOf(graph, book, asked, scope),
    ]),
  );
  return { force, left };
}

/**
 * Says what the book records of scopes that its register leaves out: one finding for each, and a scope that another needs
 * is said with that one. No exception answers it.
 */
export function scopesInForce(
  court: Court,
  book: BookRecord,
  left: Left,
  all: Definitions,
  register: Register | undefined,
): void {
  const found = [...left].flatMap(([scope, shown]) => (shown.length > 0 ? [scope] : []));
  const needed = (scope: Scope) => withNeeded(all.scopes ?? [], [scope.id]);
  for (const scope of found) {
    if (found.some((other) => other !== scope && needed(other).has(scope.id))) continue;
    const others = found.filter((other) => other !== scope && needed(scope).has(other.id));
    const shown = [scope, ...others].flatMap((one) => left.get(one) ?? []);
    say(court, book, all, register, scope, shown);
  }
}

function say(
  court: Court,
  book: BookRecord,
  definitions: Definitions,
  register: Register | undefined,
  scope: Scope,
  signs: readonly Shown[],
): void {
  const { world } = court;
  const words = ({ record, pointer, says }: Shown) =>
    `${placeWords(world.kinds, record, pointer).of}${says === "" ? "" : `: ${says}`}`;
  const [first] = signs;
  if (first === undefined) return;
  const more = signs.length === 1 ? "" : `, and ${signs.length - 1} more`;
  const able = definitions.registers.filter(
    ({ scopes }) => scopes === undefined || withNeeded(definitions.scopes ?? [], scopes).has(scope.id),
  );
  const message = `the register "${register?.id ?? ""}" leaves out ${scope.title.toLowerCase()}, which the book records: ${words(first)}${more}`;
  const finding = newFinding(inForce, locate(world, book, "/register"), {
    key: keyOf(inForce.id, book, scope.id),
    message,
    why: `it asks for nothing of the scope "${scope.id}": what a book must contain of it may be missing here, and nobody is told`,
    hint:
      able.length === 0
        ? "correct what is recorded: no register holds that scope"
        : `name a register that holds it (${able.map(({ id }) => `"${id}"`).join(", ")}), or correct what is recorded`,
    about: `${message} ${signs.map(words).join(" ")}`,
    related: signs.slice(0, named).map((one) => {
      const { subject, place } = locate(world, one.record, one.pointer);
      return { subject, place, message: words(one) };
    }),
    accuses: [
      addressOf(book, "/register"),
      ...signs.flatMap(({ record, pointer, names }) => (names === true ? [addressOf(record, pointer)] : [])),
    ],
  });
  addFinding(court, finding);
}

/** Records of a kind of the scope, and fields that are a sign of it. */
function recordedOf({ byKind }: Pick<Graph, "byKind">, { kinds }: Definitions, { id, signs }: Scope): readonly Shown[] {
  const recordsOf = (kind: string) => [...(byKind.get(kind)?.values() ?? [])];
  return [
    ...signs.flatMap(({ kind, path, values }) =>
      recordsOf(kind).flatMap((record): readonly Shown[] => {
        const pointer = `/${path.replaceAll(".", "/")}`;
        const value = atPointer(record.value, pointer);
        if (value === undefined || (isList(value) && value.length === 0)) return [];
        if (values !== undefined && !values.includes(textOf(value))) return [];
        const { field } = placeWords(kinds, record, pointer);
        return [{ record, pointer, says: typeof value === "string" ? `${field} "${value}"` : field }];
      }),
    ),
    ...[...kinds.values()]
      .filter((kind) => kind.scope === id && !kind.derived)
      .flatMap(({ name }) => recordsOf(name).map((record): Shown => ({ record, pointer: "", says: "" }))),
  ];
}

/** Sheets, overrides and tables that name something of the scope: they show nothing of the equipment, and are of no use. */
function namedOf({ byKind }: Pick<Graph, "byKind">, book: BookRecord, asked: InForce, scope: Scope): readonly Shown[] {
  const recordsOf = (kind: string) => [...(byKind.get(kind)?.values() ?? [])];
  const ids = calculationsOut(asked, (id) => id === scope.id);
  const overrides = book.value["overrides"];
  const isOut = (of: InForce["outTables"], name: Json | undefined) =>
    typeof name === "string" && of.get(name)?.includes(scope) === true;
  return [
    ...recordsOf(sheetKind).flatMap((record): readonly Shown[] => {
      const name = textOf(record.value["calculation"]);
      return ids.has(name) ? [{ record, pointer: "/calculation", says: `calculation "${name}"`, names: true }] : [];
    }),
    ...(isList(overrides) ? overrides : []).flatMap((one, index): readonly Shown[] => {
      const name = isObject(one) ? one["parameter"] : undefined;
      return isOut(asked.outParameters, name)
        ? [{ record: book, pointer: `/overrides/${index}`, says: "", names: true }]
        : [];
    }),
    ...recordsOf("reference-table").flatMap((record): readonly Shown[] => {
      const name = record.value["table"];
      return isOut(asked.outTables, name)
        ? [{ record, pointer: "/table", says: `table "${textOf(name)}"`, names: true }]
        : [];
    }),
  ];
}

/** Ids of the calculations that are out of force, of the scopes that are asked for. */
function calculationsOut({ definitions }: InForce, ofScope: (id: string) => boolean): ReadonlySet<string> {
  const out = (definitions.whole?.calculations ?? []).filter((one) => !definitions.calculations.includes(one));
  return new Set(out.filter((one) => ofScope(scopeOfCalculation(definitions.kinds, one))).map(({ id }) => id));
}

/** Sheets of calculations that are not in force: what they show is said once, of their scope. */
export function sheetsOutOfForce({ byKind }: Pick<Graph, "byKind">, force: InForce): readonly BookRecord[] {
  const ids = calculationsOut(force, () => true);
  return [...(byKind.get(sheetKind)?.values() ?? [])].filter(({ value }) => ids.has(textOf(value["calculation"])));
}

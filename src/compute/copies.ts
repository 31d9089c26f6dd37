import type { Calculation } from "../model/calculation.ts";
import type { Finding, Outcome } from "../model/finding.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { conclude, locate, type Court } from "../court/court.ts";
import { startAt, type Hit } from "../reading/hit.ts";
import { holds } from "../reading/subjects.ts";
import { notePlace } from "../reading/notes.ts";
import { clear, newTrail, noteRead } from "../reading/trail.ts";
import { newVisits } from "../reading/visits.ts";
import type { World } from "../reading/world.ts";
import { disagreement } from "./agree.ts";
import { bindAlone } from "./inputs.ts";
import type { Dissent, Original } from "./sheet-case.ts";
import { pairWith, statedIn, type Stated } from "./pairs.ts";
import { adoptedBy, sheetKind } from "./adoption.ts";
import { copiedOtherwise, disagrees, comparedAs } from "./sheet-findings.ts";
import { kindText } from "../model/kind-text.ts";

/**
 * Compares values of records with the sheets that copy them, before anything is computed from them: a value that sheets
 * contradict and none confirms is one finding that disputes it. One sheet is accused beside the record; several that agree
 * outvote it. Where a sheet confirms the record, those that do not are at fault, and are compared
 * after the recomputation. Returns the outcomes of what was concluded, by address of the copy.
 */
export function compareCopies(court: Court, calculations: readonly Calculation[]): ReadonlyMap<Address, Outcome> {
  const outcomes = new Map<Address, Outcome>();
  for (const original of originalsOf(court, calculations)) {
    if (original.confirmed || original.dissents.length === 0) continue;
    const finding = findingOf(court, original);
    for (const { sheet, calculation, pair, trail } of original.dissents) {
      const { definition, subject } = comparedAs(calculation, sheet, pair);
      outcomes.set(addressOf(sheet, pair.pointer), conclude(court, definition, subject, trail, [finding]));
    }
  }
  return outcomes;
}

function findingOf({ world }: Court, original: Original): Finding {
  const [first, ...more] = original.dissents;
  if (first === undefined || more.length > 0) return copiedOtherwise(world, original);
  const { sheet, calculation, pair, found, trail } = first;
  const { subject, place } = locate(world, original.record, original.pointer);
  return {
    ...disagrees(world, sheet, calculation, pair, found, trail),
    related: [{ subject, place, message: `${original.text} here` }],
    disputes: [addressOf(original.record, original.pointer)],
  };
}

function originalsOf({ world }: Court, calculations: readonly Calculation[]): Iterable<Original> {
  const originals = new Map<Address, Original>();
  const byId = new Map(calculations.map((one) => [one.id, one]));
  for (const sheet of world.graph.byKind.get(sheetKind)?.values() ?? []) {
    const id = sheet.value["calculation"];
    const calculation = typeof id === "string" ? byId.get(id) : undefined;
    // A sheet that adopts ours has seen no value of its own: it speaks for none.
    if (calculation === undefined || adoptedBy(sheet) !== undefined) continue;
    const copies = visit(world, calculation, `copies of ${addressOf(sheet)}`, () =>
      copiesIn(world, calculation, sheet),
    );
    for (const { record, pointer, text, dissent } of copies) {
      const address = addressOf(record, pointer);
      const known = originals.get(address);
      const original: Original = known ?? { record, pointer, text, dissents: [], confirmed: false };
      if (known === undefined) originals.set(address, original);
      if (dissent === null) original.confirmed = true;
      else original.dissents.push(dissent);
    }
  }
  return originals.values();
}

/** A value that a sheet copies from a record, and what it has against it. */
interface Copy extends Pick<Original, "record" | "pointer" | "text"> {
  readonly dissent: Dissent | null;
}

const visit = newVisits<readonly Copy[]>(() => true);

function copiesIn(world: World, calculation: Calculation, sheet: BookRecord): readonly Copy[] {
  const start = subjectOf(world, calculation, sheet);
  if (start === null) return [];
  const stated = statedIn(sheet, "inputs");
  return [...stated, ...adoptedAlone(calculation, sheet, stated)].flatMap((one) => {
    const copy = copyOf(world, calculation, sheet, start, one);
    return copy === null ? [] : [copy];
  });
}

/** What a sheet was made for, if its calculation applies there for certain. */
function subjectOf(world: World, { appliesTo }: Calculation, sheet: BookRecord): Hit | null {
  // What it is about decides, also where that is nothing it copies from.
  for (const field of ["/calculation", "/subject"]) notePlace(world, sheet, field);
  const link = world.graph.out.get(sheet)?.get("/subject");
  const { kind, list } = kindText(appliesTo.kind);
  const pointer = link?.toPointer ?? "";
  if (link?.to?.kind !== kind || (list === "" ? pointer !== "" : !pointer.startsWith(`/${list}/`))) return null;
  const trail = newTrail();
  for (const field of ["/id", "/calculation", "/subject"]) noteRead(world, trail, sheet, field, undefined);
  noteRead(world, trail, link.to, pointer === "" ? "/id" : pointer, undefined);
  const start = startAt(world, link.to, pointer);
  return holds(world, appliesTo.when, start, trail) && clear(trail) ? start : null;
}

/** The adopted value, where the sheet does not state it among its inputs too. */
function adoptedAlone({ adopted }: Calculation, sheet: BookRecord, stated: readonly Stated[]): readonly Stated[] {
  const text = sheet.value["adopted"];
  if (adopted === undefined || typeof text !== "string" || stated.some(({ symbol }) => symbol === adopted)) return [];
  return [{ list: "results", symbol: adopted, text, pointer: "/adopted" }];
}

function copyOf(world: World, calculation: Calculation, sheet: BookRecord, start: Hit, stated: Stated): Copy | null {
  const { symbol, pointer } = stated;
  const input = Object.hasOwn(calculation.inputs, symbol) ? calculation.inputs[symbol] : undefined;
  if (input === undefined || stated.text === "") return null;
  const trail = newTrail();
  noteRead(world, trail, sheet, pointer, stated.text);
  const bound = bindAlone(world, symbol, input, start, trail);
  const pair = bound === null ? null : pairWith(input, bound, stated);
  // What is doubted, absent or of no use is said elsewhere; what is computed is compared after.
  if (bound?.origin?.type !== "record" || pair === null || !clear(trail)) return null;
  const { record, pointer: at } = bound.origin;
  const found = disagreement(pair);
  const sort = pointer === "/adopted" ? "adopted" : "input";
  const dissent = found === null ? null : ({ sheet, calculation, pair: { ...pair, sort }, found, trail } as const);
  return { record, pointer: at, text: bound.written ?? "", dissent };
}

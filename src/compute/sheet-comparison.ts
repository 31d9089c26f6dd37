import type { Calculation } from "../model/calculation.ts";
import type { ComparedValue, Done, Origin } from "../model/book.ts";
import type { Finding, Outcome } from "../model/finding.ts";
import { measure, parseQuantity } from "../model/quantity.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { conclude, type Court } from "../court/court.ts";
import { linksOf } from "../reading/links-back.ts";
import { notePlace, noteResult } from "../reading/notes.ts";
import { clear, newTrail, noteAddress, noteRead, noteValue, type Trail } from "../reading/trail.ts";
import { newVisits } from "../reading/visits.ts";
import type { World } from "../reading/world.ts";
import { sheetsAbout } from "./adoption.ts";
import { disagreement, oursOf } from "./agree.ts";
import type { Pair } from "./pairs.ts";
import { placesBehind, symbolsBehind, symbolsOf } from "../model/rests.ts";
import type { SheetCase } from "./sheet-case.ts";
import { disagrees, comparedAs } from "./sheet-findings.ts";
import { calculationKey } from "../model/calculation-key.ts";

/** A sheet of the maker, with what of it can be compared. */
export interface Sheet {
  readonly record: BookRecord;
  readonly of: SheetCase;
  readonly inputs: readonly Pair[];
  readonly results: readonly Pair[];
  readonly values: ComparedValue[];
}

/** Sheets by the case they are about. */
export type Sources = ReadonlyMap<string, readonly Sheet[]>;

/** Name of a calculation of one subject. */
export const caseName = ({ id }: Calculation, { subject, pointer }: Pick<SheetCase, "subject" | "pointer">) =>
  calculationKey(id, subject, pointer);

/** Compares one value. A result reads the sheet's inputs behind it too, and an input the place our own value stands in. */
export function compare(
  court: Court,
  sheet: Sheet,
  pair: Pair,
  sources: Sources,
  copies: ReadonlyMap<Address, Outcome>,
): void {
  const { symbol, sort, text, unit, pointer } = pair;
  const { record, values } = sheet;
  const { verdict } = copies.get(addressOf(record, pointer)) ?? concluded(court, sheet, pair, sources);
  values.push({ symbol, sort, recorded: text, recomputed: oursOf(pair), unit, verdict });
}

function concluded(court: Court, sheet: Sheet, pair: Pair, sources: Sources): Outcome {
  const { record, of } = sheet;
  const place = `${addressOf(record, pair.pointer)} of ${caseName(of.calculation, of)}`;
  const { trail, objections } = visit(court.world, of.calculation, place, () =>
    weigh(court.world, sheet, pair, sources),
  );
  const { definition, subject } = comparedAs(of.calculation, record, pair);
  return conclude(court, definition, subject, trail, objections);
}

/** One value weighed against ours. */
interface Weighed {
  readonly trail: Trail;
  readonly objections: readonly Finding[];
}

const visit = newVisits<Weighed>(() => true);

function weigh(world: World, sheet: Sheet, pair: Pair, sources: Sources): Weighed {
  const { record, of } = sheet;
  // It rests on our result as a whole.
  noteResult(world, calculationKey(of.calculation.id, of.subject, of.pointer), of.done);
  const trail: Trail = newTrail();
  noteRead(world, trail, record, "/id", record.id);
  noteRead(world, trail, record, pair.pointer, pair.text);
  if (pair.sort !== "input") readBehind(world, trail, sheet, pair.symbol);
  // Our value rests on every place it was computed or looked up from: where one is doubted, so is the comparison.
  for (const address of restingOn(of, pair)) noteAddress(world, trail, address, "");
  const origin = originOf(of, pair);
  if (origin?.type === "calculation") readSource(world, trail, pair, origin, sources);
  if (origin?.type === "record") noteRead(world, trail, origin.record, origin.pointer, String(pair.ours));
  else noteValue(trail, `${of.calculation.id} ${pair.symbol}`, String(pair.ours));
  const found = disagreement(pair);
  const objections =
    found === null || !clear(trail) ? [] : [disagrees(world, record, of.calculation, pair, found, trail)];
  return { trail, objections };
}

/** What the sheet itself states of the values behind a result. */
function readBehind(world: World, trail: Trail, { record, of, inputs }: Sheet, result: string): void {
  const behind = new Set(symbolsOf(of.calculation, result));
  for (const { symbol, pointer, text } of inputs) if (behind.has(symbol)) noteRead(world, trail, record, pointer, text);
}

/** A value that an earlier sheet states alike was copied from it: what is wrong there is wrong here for that reason. */
function readSource(
  world: World,
  trail: Trail,
  pair: Pair,
  { of, symbol }: Extract<Origin, { type: "calculation" }>,
  sources: Sources,
): void {
  // Whether a sheet is a source follows from what it says it is about.
  for (const { from } of linksOf(world, addressOf(of.subject, of.pointer), sheetsAbout))
    for (const place of ["/calculation", "/adopts"]) notePlace(world, from, place);
  for (const source of sources.get(caseName(of.calculation, of)) ?? []) {
    const stated = source.results.find((one) => one.symbol === symbol);
    if (stated === undefined || !statesAlike(pair, stated)) continue;
    noteRead(world, trail, source.record, stated.pointer, stated.text);
    readBehind(world, trail, source, symbol);
  }
}

/** Whether two sheets state one value, in whatever unit. */
function statesAlike(pair: Pair, { text }: Pair): boolean {
  if (pair.text === text) return true;
  const parsed = parseQuantity(text, { unit: pair.unit });
  return parsed.ok && disagreement({ ...pair, ours: measure(parsed.quantity, pair.unit).value }) === null;
}

const computedOf = ({ done }: SheetCase): Done | undefined => ("pending" in done ? done.known : done);

const originOf = (of: SheetCase, { sort, symbol }: Pair): Origin | undefined =>
  sort === "result" ? undefined : computedOf(of)?.inputs.get(symbol)?.origin;

function restingOn(of: SheetCase, pair: Pair): Iterable<Address> {
  const done = computedOf(of);
  if (done === undefined) return [];
  const origin = originOf(of, pair);
  if (origin?.type === "calculation") return placesBehind(origin.of, origin.symbol);
  if (pair.sort !== "result" && origin?.type !== "table") return [];
  // An acceptance that fails may fail because of what its result was made of: the sheet's own result waits for it too.
  const refused = done.accept.filter(
    ({ acceptance: { left, right }, verdict }) =>
      verdict !== "passed" && symbolsBehind(done.calculation, [left, right]).includes(pair.symbol),
  );
  const accused = refused.flatMap(({ acceptance }) => [...(done.reads.get(acceptance.accuses) ?? [])]);
  return [...placesBehind(done, pair.symbol), ...accused];
}

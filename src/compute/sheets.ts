import type { Calculation } from "../model/calculation.ts";
import type { ComparedValue, Computed, Done, MakerSheet } from "../model/book.ts";
import type { Finding, Outcome, Subject } from "../model/finding.ts";
import { grouped } from "../model/grouped.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { placeWords } from "../model/words.ts";
import { conclude, endStage, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { linksOf } from "../reading/links-back.ts";
import { clear, newTrail, noteRead } from "../reading/trail.ts";
import type { World } from "../reading/world.ts";
import { caseName, compare, type Sheet } from "./sheet-comparison.ts";
import type { SheetCase } from "./sheet-case.ts";
import { adoptedPair, pairOf, statedIn, type Pair, type Stated } from "./pairs.ts";
import { adoptedBy, judgeAdoption, sheetKind, sheetsAbout } from "./adoption.ts";
import { comparisonOf, incomplete, notCompared } from "./sheet-findings.ts";
import { subjectId } from "../model/subject.ts";

export { sheetRules } from "./sheet-findings.ts";

/**
 * Compares every sheet of the maker with the recomputation: inputs one by one, then results, so that one wrong input is
 * one finding. A sheet whose calculation waits for something waits with it. What was concluded about `copies` stands.
 * Sheets that were met are added to `seen`.
 */
export function compareSheets(
  court: Court,
  cases: readonly SheetCase[],
  copies: ReadonlyMap<Address, Outcome>,
  seen: Set<object>,
): ReadonlyMap<SheetCase, Computed["sheets"]> {
  const sheets: Sheet[] = [];
  const found = new Map<SheetCase, readonly MakerSheet[]>();
  const add = (of: SheetCase, record: BookRecord, values: readonly ComparedValue[], adopts?: string) =>
    found.set(of, [...(found.get(of) ?? []), { record, values, ...(adopts !== undefined && { adopts }) }]);
  for (const of of cases)
    for (const record of sheetsOf(court, of)) {
      const adopts = adoptedBy(record);
      if (adopts !== undefined) {
        if ("pending" in of.done && of.done.notApplicable) continue;
        conclude(court, comparisonOf(of.calculation, "results"), recordOf(record), newTrail(), [], false);
        judgeAdoption(court, of, record, adopts);
        add(of, record, [], adopts);
      } else if ("pending" in of.done) {
        // Made for something it does not apply to: said with the sheets that nothing was compared with.
        if (of.done.notApplicable) continue;
        const trail = newTrail();
        trail.doubts.push(...of.done.findings);
        trail.absences.push(...of.done.absences);
        conclude(court, comparisonOf(of.calculation, "results"), recordOf(record), trail, []);
        for (const one of statedOn(record)) if (!isKnown(of.calculation, one)) sayUnknown(court, of, record, one);
        // What does not rest on what is waited for is compared all the same.
        if (of.done.known !== undefined)
          sheets.push({ record, of, ...pairsIn(court.world, of.done.known, record), values: [] });
        else add(of, record, []);
      } else sheets.push(pairsOf(court, of.done, of, record));
      seen.add(record);
    }
  // Calculations stand in the order of their needs: a wrong result is known before a sheet copies it.
  const sources = grouped(sheets, ({ of }) => caseName(of.calculation, of));
  for (const own of grouped(sheets, ({ of }) => of.calculation.id).values()) {
    for (const sheet of own) for (const pair of sheet.inputs) compare(court, sheet, pair, sources, copies);
    endStage(court);
    for (const sheet of own) for (const pair of sheet.results) compare(court, sheet, pair, sources, copies);
    endStage(court);
  }
  for (const { of, record, values } of sheets) add(of, record, values);
  return found;
}

const recordOf = ({ kind, id }: BookRecord): Subject => ({ kind, id });

function sheetsOf({ world }: Court, { calculation, subject, pointer }: SheetCase): readonly BookRecord[] {
  return linksOf(world, addressOf(subject, pointer), sheetsAbout).flatMap(({ from, toPointer }) =>
    toPointer === pointer && from.value["calculation"] === calculation.id ? [from] : [],
  );
}

const statedOn = (sheet: BookRecord) => [...statedIn(sheet, "inputs"), ...statedIn(sheet, "results")];

type Pairs = Pick<Sheet, "inputs" | "results"> & { readonly unknown: readonly Stated[] };

const pairsKnown = new WeakMap<Done, Map<BookRecord, Pairs>>();

/**
 * As `pairsOn`; found once where the book is judged again: a result that stands as before is compared with what the sheet
 * stated before.
 */
function pairsIn({ notes }: World, computed: Done, record: BookRecord): Pairs {
  if (notes === undefined) return pairsOn(computed, record);
  const known = pairsKnown.get(computed) ?? new Map<BookRecord, Pairs>();
  pairsKnown.set(computed, known);
  let pairs = known.get(record);
  if (pairs === undefined) known.set(record, (pairs = pairsOn(computed, record)));
  return pairs;
}

/** What of a sheet can be compared. */
function pairsOn(computed: Done, record: BookRecord): Pairs {
  const inputs: Pair[] = [];
  const results: Pair[] = [];
  const unknown: Stated[] = [];
  for (const one of statedOn(record)) {
    const pair = one.text === "" ? null : pairOf(computed, one);
    if (pair !== null) (pair.sort === "input" ? inputs : results).push(pair);
    else if (one.text !== "") unknown.push(one);
  }
  const adopted = adoptedPair(computed, record);
  if (adopted !== null) results.push(adopted);
  return { inputs, results, unknown };
}

/** What of a sheet can be compared; what cannot is said at once. */
function pairsOf(court: Court, computed: Done, of: SheetCase, record: BookRecord): Sheet {
  const { inputs, results, unknown } = pairsIn(court.world, computed, record);
  for (const one of unknown) sayUnknown(court, of, record, one);
  const trail = newTrail();
  noteRead(court.world, trail, record, "/inputs", undefined);
  const missing = leftOut(court, computed, of, record, statedOn(record), unknown);
  conclude(court, comparisonOf(of.calculation, "inputs"), recordOf(record), trail, clear(trail) ? missing : []);
  return { record, of, inputs, results, values: [] };
}

function sayUnknown(court: Court, of: SheetCase, record: BookRecord, stated: Stated): void {
  const trail = newTrail();
  noteRead(court.world, trail, record, stated.pointer, stated.text);
  const subject = { kind: record.kind, id: subjectId(record.id, stated.symbol) };
  const unknown = clear(trail) ? [unknownSymbol(court, of, record, stated)] : [];
  conclude(court, comparisonOf(of.calculation, stated.list), subject, trail, unknown);
}

const isKnown = ({ inputs, steps }: Calculation, { symbol, text }: Stated) =>
  text === "" || Object.hasOwn(inputs, symbol) || steps.some((step) => step.symbol === symbol);

/** A symbol the calculation does not know, or has no value for: a query, since nobody can compare it. */
function unknownSymbol(court: Court, of: SheetCase, sheet: BookRecord, stated: Stated): Finding {
  const { symbol, text, list, pointer } = stated;
  const { inputs, steps, title } = of.calculation;
  const symbols = [...Object.entries(inputs), ...steps.map((step) => [step.symbol, step] as const)];
  const known = isKnown(of.calculation, stated);
  return incomplete(court.world, sheet, of, list, pointer, "query", {
    name: `unknown ${symbol}`,
    message: known
      ? `sheet ${sheet.id} states "${symbol}" as ${text}, for which the records give no value to compare`
      : `sheet ${sheet.id} states "${symbol}", which ${title} does not know`,
    why: known
      ? "the calculation was done without it"
      : `it knows ${symbols.map(([name, { means }]) => `"${name}", ${means}`).join("; ")}`,
    hint: known
      ? "design to enter the value in the record it belongs to, or to answer this query"
      : "design to correct the symbol, or to answer this query",
  });
}

/**
 * Inputs taken from the records that the sheet does not state: it does not show what it rests on. A symbol nobody
 * knows may be one of them misspelt, and a sheet without any list of inputs owes that list first.
 */
function leftOut(
  { world }: Court,
  computed: Done,
  of: SheetCase,
  sheet: BookRecord,
  stated: readonly Stated[],
  unknown: readonly Stated[],
): readonly Finding[] {
  const listed = world.kinds.get(sheet.kind)?.fields.get("inputs");
  if (sheet.value["inputs"] === undefined && (listed?.due !== undefined || listed?.required === true)) return [];
  const written = new Set(stated.filter(({ text }) => text !== "").map(({ symbol }) => symbol));
  const taken = [...computed.inputs.values()].filter(
    ({ value, origin }) => value !== undefined && (origin?.type === "record" || origin?.type === "calculation"),
  );
  const missing = taken
    .map(({ symbol }) => symbol)
    .filter((symbol) => !written.has(symbol))
    .sort();
  const misspelt = unknown.filter(
    ({ list, symbol }) => list === "inputs" && !Object.hasOwn(of.calculation.inputs, symbol),
  );
  if (missing.length <= misspelt.length) return [];
  return [
    incomplete(world, sheet, of, "inputs", "/inputs", "gap", {
      name: "left out",
      message: `sheet ${sheet.id} does not state ${missing.map((symbol) => `the ${of.calculation.inputs[symbol]?.means ?? ""} ("${symbol}")`).join(", ")}`,
      why: "each input of a calculation is shown, so that it can be followed",
      hint: "design to complete the sheet",
    }),
  ];
}

/** Sheets that nothing was compared with: an unknown calculation, or one that does not apply to what it was made for. */
export function checkSheets(court: Court, calculations: readonly Calculation[], seen: ReadonlySet<object>): void {
  const { world } = court;
  for (const record of world.graph.byKind.get(sheetKind)?.values() ?? []) {
    const subject = world.graph.out.get(record)?.get("/subject");
    const open = ["/id", "/calculation", "/subject"].some(
      (place) => world.ledger.doubts(addressOf(record, place)).length > 0,
    );
    const id = record.value["calculation"];
    if (seen.has(record) || open || typeof id !== "string") continue;
    const known = calculations.some((calculation) => calculation.id === id);
    // What it was made for is missing, which is said elsewhere.
    if (known && subject?.to === undefined) continue;
    const about = subject?.to === undefined ? "" : placeWords(world.kinds, subject.to, subject.toPointer ?? "").of;
    const title = calculations.find((calculation) => calculation.id === id)?.title ?? "";
    const message = known
      ? `sheet ${record.id} is about "${title}" of ${about}, to which it does not apply`
      : `sheet ${record.id} is about "${id}", which is no known calculation`;
    const why = known
      ? "the conditions under which the calculation is done are not met there"
      : `known are ${calculations.map((calculation) => `"${calculation.id}"`).join(", ")}`;
    addFinding(court, notCompared(world, record, message, why));
  }
}

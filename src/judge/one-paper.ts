import { fieldSteps, isEachStep, stepName } from "../model/field-steps.ts";
import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import { addTo } from "../model/grouped.ts";
import { isList, isObject, pointerStep, type Json } from "../model/json.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { kindWords } from "../model/titles.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { keyOf } from "../model/finding-key.ts";
import { newFinding } from "../model/new-finding.ts";

const onePaper: BuiltIn = {
  id: "one-paper",
  title: "Records read from one page of an original bear one number",
  severity: "query",
  basis: ownChoice("a paper has one number: where two are read from one page, one of the two cites the wrong page"),
};
export const onePaperRules: readonly BuiltIn[] = [onePaper];

/** A record that cites a page, with the numbers of papers it takes from there. */
interface Citing {
  readonly record: BookRecord;
  /** Place of the citation. */
  readonly pointer: string;
  readonly numbers: ReadonlySet<string>;
}

/**
 * Asks about each page from which records of one kind are read whose papers have different numbers. Which kinds have a number,
 * and where, says the schema; a record without one is not judged here, for it owes it.
 */
export function onePaperEach(court: Court): void {
  const { graph, kinds, ledger } = court.world;
  const pages = new Map<string, { readonly original: BookRecord; readonly page: number; readonly citing: Citing[] }>();
  for (const record of graph.records) {
    const path = kinds.get(record.kind)?.number;
    if (path === undefined) continue;
    for (const [base, places] of byBase(record, path)) {
      const original = graph.out.get(record)?.get(`${base}/original`)?.to;
      const page = original === undefined ? undefined : pageAt(record, base, original);
      if (original === undefined || page === undefined) continue;
      const doubted = [base, ...places.map(({ pointer }) => pointer)].some(
        (pointer) => ledger.doubts(addressOf(record, pointer)).length > 0,
      );
      if (doubted) continue;
      const name = `${record.kind} ${original.id} ${page}`;
      const here = pages.get(name) ?? { original, page, citing: [] };
      pages.set(name, here);
      here.citing.push({ record, pointer: base, numbers: new Set(places.map(({ number }) => number)) });
    }
  }
  for (const { original, page, citing } of pages.values()) {
    const odd = citing.filter((one) => citing.some((other) => other.record !== one.record && differ(one, other)));
    if (odd.length > 0) say(court, original, page, odd);
  }
}

const differ = (one: Citing, other: Citing) => ![...one.numbers].some((number) => other.numbers.has(number));

/** Numbers in a record by the citation that speaks of them: that of their row, else that of the record. */
function byBase(record: BookRecord, path: string): ReadonlyMap<string, Numbered[]> {
  const { source, sources } = record.value;
  const rows = isObject(sources) ? Object.keys(sources) : [];
  const found = new Map<string, Numbered[]>();
  for (const one of numbersAt(record.value, path)) {
    const own = rows
      .filter((place) => one.pointer === place || one.pointer.startsWith(`${place}/`))
      .sort((a, b) => b.length - a.length)[0];
    if (own !== undefined) addTo(found, `/sources${pointerStep(own)}`, one);
    else if (isObject(source)) addTo(found, "/source", one);
  }
  return found;
}

interface Numbered {
  readonly pointer: string;
  readonly number: string;
}

function numbersAt(value: Json, path: string): readonly Numbered[] {
  let here: (readonly [pointer: string, value: Json])[] = [["", value]];
  for (const step of fieldSteps(path))
    here = here.flatMap(([pointer, one]) => {
      const name = stepName(step);
      const member = isObject(one) && Object.hasOwn(one, name) ? one[name] : undefined;
      if (member === undefined) return [];
      const at = pointer + pointerStep(name);
      if (!isEachStep(step)) return [[at, member] as const];
      return isList(member) ? member.map((row, index) => [`${at}/${index}`, row] as const) : [];
    });
  return here.flatMap(([pointer, one]) => (typeof one === "string" && one !== "" ? [{ pointer, number: one }] : []));
}

/** Page a citation begins on; where none is named, the only one there is. */
function pageAt(record: BookRecord, base: string, original: BookRecord): number | undefined {
  const { source, sources } = record.value;
  const place =
    base === "/source" ? undefined : base.slice("/sources/".length).replaceAll("~1", "/").replaceAll("~0", "~");
  const one = place === undefined ? source : isObject(sources) ? sources[place] : undefined;
  const page = isObject(one) ? one["page"] : undefined;
  if (typeof page === "number") return page;
  return original.value["pages"] === 1 ? 1 : undefined;
}

const shown = 6;

function say(court: Court, original: BookRecord, page: number, citing: readonly Citing[]): void {
  const { world } = court;
  const last = citing.at(-1);
  if (last === undefined) return;
  const names = citing
    .slice(0, shown)
    .map(({ record, numbers }) => (numbers.has(record.id) ? record.id : `${record.id} (${[...numbers].join(", ")})`));
  const more = citing.length > shown ? ` and ${citing.length - shown} more` : "";
  const finding = newFinding(onePaper, locate(world, last.record, last.pointer), {
    key: keyOf(onePaper.id, original, `${last.record.kind} page ${page}`),
    message: `${kindWords(world.kinds, last.record.kind)} ${names.join(" and ")}${more} are read from page ${page} of ${original.id}, and differ in their numbers`,
    why: "a page is one paper's, and a paper has one number",
    hint: "look which of them stands on that page, and correct the page or the original that the others cite, or the number",
    about: JSON.stringify(citing.map(({ record, numbers }) => [addressOf(record), ...numbers])),
    related: citing.slice(0, -1).map(({ record, pointer, numbers }) => {
      const at = locate(world, record, pointer);
      return { subject: at.subject, place: at.place, message: `${[...numbers].join(", ")} is read from there too` };
    }),
    accuses: citing.map(({ record, pointer }) => addressOf(record, pointer)),
  });
  addFinding(court, finding);
}

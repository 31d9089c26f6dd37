import { ownChoice } from "../model/basis.ts";
import type { Graph, Link } from "../model/graph.ts";
import { isList, isObject } from "../model/json.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { kindWords } from "../model/titles.ts";
import { missingField, absenceKey } from "../reading/absent.ts";
import type { Court } from "../court/court.ts";

/**
 * Registers the original of every record that copies a paper and names none. A sheet that was imported and filed is the
 * original of what was read from it: a log that was born as a sheet has no scan.
 */
export function wantPapers(court: Court): void {
  const { graph, kinds, ledger } = court.world;
  const filed = new Set([...(graph.byKind.get("original")?.values() ?? [])].map(({ value }) => value["sha256"]));
  for (const record of graph.records) {
    const { transcribes: due, transcribesUnless: unless } = kinds.get(record.kind) ?? {};
    if (
      due === undefined ||
      (unless !== undefined && record.value[unless] !== undefined) ||
      hasPaper(record, filed) ||
      ledger.doubts(addressOf(record, "/source")).length > 0
    )
      continue;
    court.wants.push({
      absence: missingField(record, "", "source"),
      by: null,
      due,
      basis: ownChoice(
        `a ${kindWords(kinds, record.kind)} is typed from a paper: without it nobody can compare the two`,
      ),
      owner: "document control",
    });
  }
}

/** Registers the papers of rows that each copy one, such as calibrations, as far as the record names fewer pages than it has rows. */
export function wantRowPapers(court: Court): void {
  const { graph, kinds, ledger } = court.world;
  for (const record of graph.records)
    for (const [name, { item, title }] of kinds.get(record.kind)?.fields ?? []) {
      const rows = record.value[name];
      if (item?.transcribes === undefined || !isList(rows) || rows.length < 2) continue;
      // Without any paper the record itself owes one, and that is said.
      // Without any paper the record itself owes one, and that is said.
      if (!isObject(record.value["source"]) || ledger.doubts(addressOf(record, "/source")).length > 0) continue;
      // A paper that is named and not there is missed by its link.
      if ([...(graph.out.get(record)?.values() ?? [])].some((link) => namesPaper(link) && link.to === undefined))
        continue;
      const found = rowPapers(graph, record, name, rows.length);
      if (found.length >= rows.length) continue;
      const step = `${name}[].original`;
      court.wants.push({
        absence: {
          key: absenceKey({ record, pointer: "" }, `${step} at least ${rows.length}`),
          name: `original of ${name} at least ${rows.length}`,
          owner: { record, pointer: "" },
          step,
          filters: "",
          kind: null,
          target: null,
          short: { found, atLeast: rows.length },
        },
        by: null,
        due: item.transcribes,
        basis: ownChoice(`each of the ${title.toLowerCase()} copies a paper of its own`),
        owner: "document control",
        hint: `name the paper of each in sources, by its place such as /${name}/1, or cite all the pages of one`,
      });
    }
}

const namesPaper = ({ pointer }: Link): boolean => /^\/sources?\/(?:.*\/)?original$/.test(pointer);

/** The originals of rows: those they name themselves, and of the record's own as many as it cites pages of it. */
function rowPapers(graph: Graph, record: BookRecord, name: string, rows: number): readonly BookRecord[] {
  const links = graph.out.get(record);
  const to = (pointer: string) => links?.get(`${pointer}/original`)?.to;
  const own = Array.from({ length: rows }, (_, index) => to(`/sources/~1${name}~1${index}`));
  const named = own.flatMap((one) => one ?? []);
  const whole = to("/source");
  if (whole === undefined) return named;
  const { source } = record.value;
  const [page, last] = isObject(source) ? [source["page"], source["to"]] : [];
  const all = whole.value["pages"];
  const pages =
    typeof page !== "number" ? (typeof all === "number" ? all : 1) : typeof last === "number" ? last - page + 1 : 1;
  const left = Math.max(0, Math.min(rows - named.length, pages));
  return [...named, ...Array.from({ length: left }, () => whole)];
}

function hasPaper({ value }: BookRecord, filed: ReadonlySet<unknown>): boolean {
  const { source, imported } = value;
  // Papers of single fields are no paper of the others.
  if (isObject(source) && source["original"] !== undefined) return true;
  return isObject(imported) && filed.has(imported["sha256"]);
}

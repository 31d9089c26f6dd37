import { ownChoice } from "../model/basis.ts";
import { isObject } from "../model/json.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { kindWords } from "../model/titles.ts";
import { missingField } from "./absent.ts";
import type { Court } from "./court.ts";

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

function hasPaper({ value }: BookRecord, filed: ReadonlySet<unknown>): boolean {
  const { source, imported } = value;
  // Papers of single fields are no paper of the others.
  if (isObject(source) && source["original"] !== undefined) return true;
  return isObject(imported) && filed.has(imported["sha256"]);
}

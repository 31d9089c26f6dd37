import type { Changes } from "./changes.ts";
import { doubtsAt, type Page } from "./notes.ts";
import type { World } from "./world.ts";
import { inRecord } from "../model/record.ts";

/**
 * Whether everything noted on a page is in this world as it was in that one. `wholly`: what was said keeps records, so
 * each of those it met must be the same altogether; else other values of it may have changed.
 */
export function stillHolds(page: Page, world: World, changes: Changes, wholly: boolean): boolean {
  return (
    disjoint(page.kinds, changes.kinds) &&
    disjoint(page.back, changes.back) &&
    sameResults(page, world) &&
    samePlaces(page, changes, wholly) &&
    sameDoubts(page, world)
  );
}

function disjoint(noted: ReadonlySet<string>, changed: ReadonlySet<string>): boolean {
  if (noted.size > 0 && changed.size > 0) for (const one of noted) if (changed.has(one)) return false;
  return true;
}

/** A result that was done again is another one. */
function sameResults({ results }: Page, { computed }: World): boolean {
  for (const [key, result] of results) if (computed.get(key) !== result) return false;
  return true;
}

function samePlaces({ places }: Page, { records }: Changes, wholly: boolean): boolean {
  if (records.size === 0) return true;
  for (const [record, pointers] of places) {
    const change = records.get(record);
    if (change === undefined) continue;
    if (wholly || change === "whole") return false;
    for (const changed of change)
      for (const pointer of pointers) if (pointer === changed || pointer.startsWith(`${changed}/`)) return false;
  }
  return true;
}

function sameDoubts({ places, doubts, within }: Page, { ledger }: World): boolean {
  for (const [record, findings] of within) if (ledger.doubtsWithin(record).join("\n") !== findings) return false;
  let met = 0;
  if (!ledger.empty)
    for (const [record, pointers] of places) {
      if (!ledger.knows(record)) continue;
      for (const pointer of pointers) {
        const place = inRecord(record, pointer);
        const found = doubtsAt(ledger, place);
        if (found === "") continue;
        if (doubts.get(place) !== found) return false;
        met++;
      }
    }
  return met === doubts.size;
}

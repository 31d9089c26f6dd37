import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding, Severity } from "../model/finding.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { digestOf } from "../model/stable.ts";
import { keyOf, locate } from "../judge/court.ts";
import { digestOfReads, type Trail } from "../judge/trail.ts";
import type { World } from "../judge/world.ts";
import type { Disagreement } from "./agree.ts";
import type { Pair } from "./pairs.ts";
import type { SheetCase } from "./sheets.ts";

export const agreement = ownChoice(
  "a recorded value agrees within half a unit of its last digit on the unsafe side, one whole unit on the safe side",
);

export const sheetRules: readonly BuiltIn[] = [
  {
    id: "sheet-compared",
    title: "Every calculation sheet is compared with the recomputation",
    severity: "query",
    basis: ownChoice("what is stated on a sheet and cannot be recomputed is said aloud, never passed over"),
  },
];

/** A value of the sheet that does not agree, or agrees only by rounding to the unsafe side (a note). */
export function disagrees(
  world: World,
  sheet: BookRecord,
  { calculation }: SheetCase,
  pair: Pair,
  found: Disagreement,
  trail: Trail,
): Finding {
  const { severity, ours } = found;
  const note = severity === "note";
  const copied =
    pair.sort === "result" ? `recomputed from the linked records: ${calculation.title}` : `the records give ${ours}`;
  return {
    ...about(world, sheet, calculation.id, pair.sort === "input" ? "inputs" : "results", pair.pointer),
    key: keyOf(
      `${calculation.id}/${pair.sort === "input" ? "inputs" : "results"}`,
      sheet,
      `${pair.sort} ${pair.symbol}`,
    ),
    severity,
    verdict: "failed",
    message: `${pair.means} (${pair.symbol}) is ${pair.text} on sheet ${sheet.id}, ${note ? "rounded to the unsafe side of" : "but"} ${ours}${pair.sort === "result" ? " recomputed" : ""}`,
    why: note ? "it agrees within half a unit of its last digit" : copied,
    hint: note ? "nothing to do" : "correct the sheet, or the record it was copied from; never the recomputation",
    basis: pair.sort === "result" ? calculation.basis : agreement,
    owner: calculation.owner ?? "design",
    digest: digestOfReads(world, trail),
    accuses: note ? [] : [addressOf(sheet, pair.pointer)],
  };
}

/** Something the sheet states that cannot be compared, or does not state though it rests on it. */
export function incomplete(
  world: World,
  sheet: BookRecord,
  { calculation }: SheetCase,
  list: "inputs" | "results",
  pointer: string,
  severity: Extract<Severity, "gap" | "query">,
  words: { readonly name: string; readonly message: string; readonly why: string; readonly hint: string },
): Finding {
  const { name, ...rest } = words;
  return {
    ...about(world, sheet, calculation.id, list, pointer),
    key: keyOf(`${calculation.id}/${list}`, sheet, name),
    severity,
    verdict: "not judged",
    ...rest,
    basis: agreement,
    owner: calculation.owner ?? "design",
    digest: digestOf(words.message),
    accuses: [],
  };
}

/** A sheet that no calculation was compared with. */
export function notCompared(world: World, sheet: BookRecord, message: string, why: string): Finding {
  const { subject, place } = locate(world, sheet, "/calculation");
  return {
    key: keyOf("sheet-compared", sheet, ""),
    rule: "sheet-compared",
    severity: "query",
    verdict: "not judged",
    subject,
    place,
    message,
    why,
    hint: "correct the name of the calculation or what it was made for, or answer this query",
    basis: sheetRules[0]?.basis ?? agreement,
    owner: "design",
    due: null,
    digest: digestOf(message),
    related: [],
    waiting: [],
    exception: null,
    accuses: [addressOf(sheet, "/calculation")],
  };
}

function about(world: World, sheet: BookRecord, calculation: string, list: "inputs" | "results", pointer: string) {
  const { subject, place } = locate(world, sheet, pointer);
  return { rule: `${calculation}/${list}`, subject, place, due: null, related: [], waiting: [], exception: null };
}

import { atPointer } from "../model/json.ts";
import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Calculation } from "../model/calculation.ts";
import type { Finding, Severity, Subject } from "../model/finding.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { thePlace } from "../model/words.ts";
import { locate, type DefinitionName } from "../court/court.ts";
import { digestOfReads, mergeTrail, newTrail, type Trail } from "../reading/trail.ts";
import type { World } from "../reading/world.ts";
import { adoptionRule } from "./adoption.ts";
import type { Disagreement } from "./agree.ts";
import type { Pair } from "./pairs.ts";
import type { Original, SheetCase } from "./sheet-case.ts";
import { keyOf } from "../model/finding-key.ts";
import { partOfDefinition } from "../model/outcome-name.ts";
import { subjectId } from "../model/subject.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";

/** What a symbol means, inside a sentence: without what is noted behind it. */
function named(means: string): string {
  const [name = ""] = means.replace(/, recomputed$/, "").split(/[;:]/);
  return name.includes(",") ? `${name},` : name;
}

export const agreement = ownChoice(
  "a recorded value agrees within half a unit of its last digit on the unsafe side, one whole unit on the safe side",
);

export const sheetRules: readonly BuiltIn[] = [
  adoptionRule,
  {
    id: "sheet-compared",
    title: "Every calculation sheet is compared with the recomputation",
    reads: [
      {
        kinds: ["calculation-sheet"],
        paths: [
          "calculation",
          "subject",
          "inputs[].symbol",
          "inputs[].value",
          "results[].symbol",
          "results[].value",
          "adopted",
        ],
      },
    ],
    severity: "query",
    basis: ownChoice("what is stated on a sheet and cannot be recomputed is said aloud, never passed over"),
  },
  {
    id: "value-copied",
    title: "Calculation sheets were made with the value that the record states",
    severity: "nonconformity",
    basis: ownChoice("a sheet shows nothing about a value that it was not made with"),
  },
];

/** Name of the comparison of one list of a sheet. */
export const comparisonOf = (calculation: Calculation, list: "inputs" | "results"): DefinitionName => ({
  id: partOfDefinition(calculation.id, list),
  basis: agreement,
  owner: calculation.owner ?? "design",
  follows: true,
});

/** What the outcome of one compared value is about. */
export function comparedAs(
  calculation: Calculation,
  sheet: BookRecord,
  { sort, symbol }: Pick<Pair, "sort" | "symbol">,
): { readonly definition: DefinitionName; readonly subject: Subject } {
  return {
    definition: comparisonOf(calculation, sort === "input" ? "inputs" : "results"),
    subject: { kind: sheet.kind, id: subjectId(sheet.id, sort === "adopted" ? "adopted" : symbol) },
  };
}

/** A value of the sheet that does not agree, or agrees only by rounding to the unsafe side (a note). */
export function disagrees(
  world: World,
  sheet: BookRecord,
  calculation: Calculation,
  pair: Pair,
  found: Disagreement,
  trail: Trail,
): Finding {
  const { severity, ours, unread = false } = found;
  const owner = calculation.owner ?? "design";
  const isResult = pair.sort === "result";
  const against = `${ours}${isResult || !pair.copied ? " recomputed" : " in the records"}`;
  const message = unread
    ? `"${pair.text}" on sheet ${sheet.id} cannot be read as the ${named(pair.means)}; it is ${against}`
    : `the ${named(pair.means)} is ${pair.text} on sheet ${sheet.id}, but ${against}`;
  const by = comparisonOf(calculation, pair.sort === "input" ? "inputs" : "results");
  return newFinding(by, locate(world, sheet, pair.pointer), {
    key: keyOf(by.id, sheet, `${pair.sort} ${pair.symbol}`),
    severity,
    message,
    why: isResult
      ? `recomputed from the linked records: ${calculation.title}`
      : `a sheet shows nothing about a value that it was not made with: ${calculation.title}`,
    hint: `${owner} to correct the sheet, or the record it was copied from; never the recomputation`,
    basis: isResult ? calculation.basis : agreement,
    digest: digestOfReads(world, trail),
    accuses: [addressOf(sheet, pair.pointer)],
  });
}

/** A value of a record that several sheets contradict and none confirms. Where they differ too, each is doubted. */
export function copiedOtherwise(world: World, { record, pointer, text, dissents }: Original): Finding {
  const at = locate(world, record, pointer);
  const trail = newTrail();
  for (const one of dissents) mergeTrail(trail, one.trail);
  const stated = new Map<string, string[]>();
  for (const { pair, sheet } of dissents) stated.set(pair.text, [...(stated.get(pair.text) ?? []), sheet.id]);
  const otherwise = [...stated].map(([value, [first = "", ...more]]) =>
    more.length === 0 ? `${value} on sheet ${first}` : `${value} on ${more.length + 1} sheets`,
  );
  const means = [...new Set(dissents.map(({ pair }) => pair.means))];
  return newFinding(finderOf(sheetRules, "value-copied"), at, {
    key: keyOf("value-copied", record, at.name),
    severity: dissents.every(({ found }) => found.severity === "query") ? "query" : "nonconformity",
    message: `${thePlace(world.kinds, record, pointer)} is ${text}, but ${otherwise.join(", ")}`,
    why: `copied as ${means.join(", ")}, by ${dissents.map(({ sheet }) => sheet.id).join(", ")}`,
    hint: "design to compare with the drawing; correct the record if it was copied wrongly, else have the sheets calculated again",
    owner: "design",
    digest: digestOfReads(world, trail),
    related: dissents.map(({ sheet, pair }) => {
      const { subject, place } = locate(world, sheet, pair.pointer);
      return { subject, place, message: `${pair.text} here` };
    }),
    accuses: stated.size > 1 ? dissents.map(({ sheet, pair }) => addressOf(sheet, pair.pointer)) : [],
    disputes: [addressOf(record, pointer)],
  });
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
  const by = comparisonOf(calculation, list);
  return newFinding(by, locate(world, sheet, pointer), {
    key: keyOf(by.id, sheet, name),
    severity,
    verdict: "not judged",
    ...rest,
    about: JSON.stringify([name, atPointer(sheet.value, pointer) ?? null]),
  });
}

/** A sheet that no calculation was compared with. */
export function notCompared(world: World, sheet: BookRecord, message: string, why: string): Finding {
  return newFinding(finderOf(sheetRules, "sheet-compared"), locate(world, sheet, "/calculation"), {
    key: keyOf("sheet-compared", sheet, ""),
    verdict: "not judged",
    message,
    why,
    hint: "design to correct the name of the calculation or what it was made for, or to answer this query",
    owner: "design",
    about: JSON.stringify([sheet.value["calculation"] ?? null, sheet.value["subject"] ?? null]),
    accuses: [addressOf(sheet, "/calculation")],
  });
}

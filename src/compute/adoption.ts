import { adoptionCheck } from "../model/adopted.ts";
import { commonPractice } from "../model/basis.ts";
import type { ComputedStep, Done } from "../model/book.ts";
import type { Adoptable } from "../model/missing.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import type { BookRecord } from "../model/record.ts";
import { unitLabel } from "../model/units.ts";
import { placeWords } from "../model/words.ts";
import { pathOf } from "../reading/bind.ts";
import { conclude, locate, type Court } from "../court/court.ts";
import { follow } from "../reading/follow.ts";
import { startAt } from "../reading/hit.ts";
import { clear, digestOfReads, newTrail, noteAddress, noteRead } from "../reading/trail.ts";
import type { Absence, World } from "../reading/world.ts";
import { figuresOf } from "../model/figures.ts";
import { isSealed } from "../model/seal.ts";
import type { SheetCase } from "./sheet-case.ts";
import { keyOf } from "../model/finding-key.ts";
import { calculationKey } from "../model/calculation-key.ts";
import { newFinding } from "../model/new-finding.ts";

/** Kind of the maker's own paper about a calculation. */
export const sheetKind = "calculation-sheet";

/** The way from what sheets were made for to them. */
export const sheetsAbout = { type: "back", kind: sheetKind, field: "subject" } as const;

/** Who signs for figures that are adopted, and where a sheet says on which day. */
const adoptionRole = "design";
const adoptionSigned = pathOf(`signatures[role="${adoptionRole}"].date`);

const basis = commonPractice("a designer signs for figures, and signs again for others");

export const adoptionRule: BuiltIn = {
  id: adoptionCheck,
  title: "A sheet that adopts the recomputation is signed for its figures",
  severity: "gap",
  basis,
  reads: [{ kinds: [sheetKind], paths: ["adopts"] }],
};

/** Digest of the figures that a sheet adopts instead of stating its own; undefined of any other sheet. */
export function adoptedBy(sheet: Pick<BookRecord, "value">): string | undefined {
  const { adopts } = sheet.value;
  return typeof adopts === "string" ? adopts : undefined;
}

/** Judges whether a sheet is signed, and for the figures the recomputation gives now. Waits where there are none. */
export function judgeAdoption(court: Court, of: SheetCase, sheet: BookRecord, adopts: string): void {
  const { world } = court;
  const trail = newTrail();
  noteRead(world, trail, sheet, "/id", sheet.id);
  noteRead(world, trail, sheet, "/adopts", adopts);
  const objections: Finding[] = [];
  if ("pending" in of.done) {
    trail.doubts.push(...of.done.findings);
    trail.absences.push(...of.done.absences);
  } else {
    const { done } = of;
    // It is signed for the inputs too: where one is doubted, so is what was signed.
    for (const places of done.reads.values()) for (const address of places) noteAddress(world, trail, address, "");
    if (clear(trail) && adopts !== figuresOf(world.kinds, done))
      objections.push(otherFigures(world, of, done, sheet, adopts));
  }
  follow(world, adoptionSigned, startAt(world, sheet, ""), trail, true);
  const subject = { kind: sheet.kind, id: sheet.id };
  const named = { id: adoptionRule.id, basis, owner: of.calculation.owner ?? "design", follows: true };
  conclude(court, named, subject, trail, objections);
}

function otherFigures(world: World, of: SheetCase, done: Done, sheet: BookRecord, adopts: string): Finding {
  const other = [...world.computed.values()].find(
    (one): one is Done => !("pending" in one) && figuresOf(world.kinds, one) === adopts,
  );
  const slip = !isSealed(adopts)
    ? `sheet ${sheet.id} adopts "${adopts}", which is mistyped: its last sign does not belong to the others`
    : other !== undefined
      ? `sheet ${sheet.id} is signed for the figures of ${spoken(world, other)}, not of ${spoken(world, done)}`
      : undefined;
  const trail = newTrail();
  const figures = figuresOf(world.kinds, done);
  noteRead(world, trail, sheet, "/adopts", `${adopts} ${figures}`);
  return newFinding(adoptionRule, locate(world, sheet, "/adopts"), {
    // Other figures of several sheets mostly have one cause, and are looked at and signed for together.
    key: slip === undefined ? keyOf(adoptionRule.id, null, "other figures") : keyOf(adoptionRule.id, sheet, "digest"),
    verdict: "not judged",
    message:
      slip ??
      `sheet ${sheet.id} is signed for other figures of ${spoken(world, done)}: for ${adopts}; now it is ${figures}, with ${figuresWords(done)}`,
    why:
      slip === undefined
        ? "the digest of the figures is another than the one that was signed for; it does not tell which of them changed"
        : `the figures are ${figuresWords(done)}, and their digest is ${figures}`,
    hint: "design to look at the figures, and to sign for the digest they have now; or to put right what changed them",
    owner: of.calculation.owner ?? "design",
    digest: digestOfReads(world, trail),
  });
}

const spoken = (world: World, { calculation, subject, pointer }: Done): string =>
  `"${calculation.title}" of ${placeWords(world.kinds, subject, pointer).of}`;

/** The results that a sheet of the maker would be compared with, in words: "required thickness 4.63 mm". */
export function figuresWords({ calculation, steps }: Done): string {
  const wanted = new Set(calculation.compared.map(({ symbol }) => symbol));
  const compared = steps.filter(({ step }) => wanted.has(step.symbol));
  return (compared.length > 0 ? compared : steps.slice(-1)).map(inWords).join(", ");
}

function inWords({ step, value }: ComputedStep): string {
  const [name = ""] = step.means.split(/[;:,]/);
  return `${name} ${step.options?.[value] ?? `${Number(value.toPrecision(5))} ${unitLabel(step.unit)}`.trim()}`;
}

/** What could be adopted in the place of something absent: of a sheet, or of the figures of one. */
export function adoptable(world: World, { owner, kind, step, filters }: Absence): Adoptable | undefined {
  if (owner === null) return undefined;
  const { record, pointer } = owner;
  const [, asked = ""] = /^\[calculation="([^"]*)"\]$/.exec(filters) ?? [];
  const link = world.graph.out.get(record)?.get("/subject");
  const { calculation } = record.value;
  const isMissing = kind === sheetKind && step === `<${sheetKind}:subject>`;
  const isEmpty = record.kind === sheetKind && (step === "inputs" || step === "results");
  const key = isMissing
    ? calculationKey(asked, record, pointer)
    : isEmpty && typeof calculation === "string" && link?.to !== undefined
      ? calculationKey(calculation, link.to, link.toPointer ?? "")
      : "";
  const found = world.computed.get(key);
  if (found === undefined || "pending" in found) return undefined;
  const figures = figuresOf(world.kinds, found);
  return {
    of: spoken(world, found),
    digest: figures,
    said: figuresWords(found),
    fields: { adopts: figures, signatures: [{ role: adoptionRole }] },
  };
}

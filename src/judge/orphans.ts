import { ownChoice } from "../model/basis.ts";
import type { BuiltIn, Definitions } from "../model/definitions.ts";
import type { Field, Kind } from "../model/kind.ts";
import { pointerStep } from "../model/json.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { fieldOfPointer } from "../model/stable.ts";
import { fieldOfLink } from "../link/graph.ts";
import type { Gap } from "./absences.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import type { World } from "../reading/world.ts";
import { recordWords } from "../model/titles.ts";
import { keyOf } from "../model/finding-key.ts";
import { kindIn } from "../model/kind-text.ts";
import { newFinding } from "../model/new-finding.ts";

const recordUsed: BuiltIn = {
  id: "record-used",
  title: "A record is reached from some other record",
  severity: "note",
  basis: ownChoice("what nothing in the book refers to is either surplus, or a link is missing"),
};

export const orphanRules: readonly BuiltIn[] = [recordUsed];

/** Kinds whose records exist to be named by others: targets of some link, and not about something themselves. */
export function namedKinds(definitions: Pick<Definitions, "kinds">): ReadonlySet<string> {
  const targets = new Set(
    [...definitions.kinds.values()].flatMap((kind) => (kind.derived ? [] : targetsIn(kind.fields.values()))),
  );
  return new Set(
    [...targets].filter(
      (name) => !aboutAnother(definitions.kinds.get(name)) && !isSequence(definitions.kinds.get(name)),
    ),
  );
}

/** Records that follow one another (the steps of a plan) have a last one, which nothing names. */
function isSequence(kind: Kind | undefined): boolean {
  return [...(kind?.fields.values() ?? [])].some((field) => {
    // Every record may have attachments, so that an original may too.
    if (field.name === "attachments") return false;
    const targets = field.targets ?? field.item?.targets ?? [];
    return targets.length === 1 && targets[0] === kind?.name;
  });
}

export function targetsIn(fields: Iterable<Field>): string[] {
  return [...fields].flatMap((field) => [
    ...(field.targets ?? []).map((target) => kindIn(target)),
    ...targetsIn(field.fields?.values() ?? []),
    ...(field.item === undefined ? [] : targetsIn([field.item])),
  ]);
}

function aboutAnother(kind: Kind | undefined): boolean {
  return (
    kind === undefined ||
    [...kind.fields.values()].some((field) => field.required && (field.type === "link" || field.item?.type === "link"))
  );
}

/** Kinds of which something is absent or named wrongly: what nothing names may be what is meant there. */
export function openKinds(world: World, gaps: readonly Pick<Gap, "absence">[]): ReadonlySet<string> {
  const missing = gaps.flatMap(({ absence }) => {
    const field = absence.owner === null ? undefined : fieldOfStep(world, absence.owner, absence.step);
    return [...(absence.kind === null ? [] : [absence.kind]), ...(field === undefined ? [] : targetsIn([field]))];
  });
  const broken = world.graph.links.flatMap((link) => {
    if (link.state === "found") return [];
    const field = fieldOfLink(link, world.kinds);
    return link.target !== null ? [link.target.kind] : field === undefined ? [] : targetsIn([field]);
  });
  return new Set([...missing, ...broken]);
}

function fieldOfStep(world: World, owner: NonNullable<Gap["absence"]["owner"]>, step: string): Field | undefined {
  const { record, pointer } = owner;
  return fieldOfPointer(world.kinds.get(record.kind)?.fields, record.value, pointer + pointerStep(step));
}

/** A record that names what was designed, as a heat treatment its joints, is reached from there. */
function speaksOfDesign({ graph, kinds }: World, record: BookRecord): boolean {
  return [...(graph.out.get(record)?.values() ?? [])].some(
    ({ to }) => to !== undefined && to !== record && kinds.get(to.kind)?.carry === "same-design",
  );
}

/** A note for every record that nothing names, unless something of its kind is missing or named wrongly: then it waits. */
export function noteOrphans(court: Court, waitingKinds: ReadonlySet<string>, readFrom: ReadonlySet<BookRecord>): void {
  const { world } = court;
  for (const kind of namedKinds(world.definitions)) {
    if (waitingKinds.has(kind)) continue;
    const unnamed: BookRecord[] = [];
    for (const record of world.graph.byKind.get(kind)?.values() ?? []) {
      if (readFrom.has(record)) continue;
      const others = (world.graph.back.get(addressOf(record)) ?? []).filter(
        (link) => link.from !== record && world.kinds.get(link.from.kind)?.derived !== true,
      );
      if (others.length === 0 && !speaksOfDesign(world, record)) unnamed.push(record);
    }
    // Papers come by the folder: one list says which of them were never used.
    if (kind === "original" && unnamed.length > 1) {
      sayOriginals(court, unnamed);
      continue;
    }
    for (const record of unnamed) {
      const finding = newFinding(recordUsed, locate(world, record, ""), {
        key: keyOf("record-used", record, ""),
        message: `nothing in the book names ${recordWords(world.kinds, record)}`,
        why: "no link of any other record leads to it",
        hint: "link it where it was used, or say in its remarks why it is included",
        about: record.id,
      });
      addFinding(court, finding);
    }
  }
}

const shown = 12;

function sayOriginals(court: Court, unnamed: readonly BookRecord[]): void {
  const { world } = court;
  const [first] = unnamed;
  if (first === undefined) return;
  const ids = unnamed.map(({ id }) => id);
  const more = ids.length > shown ? ` and ${ids.length - shown} more` : "";
  const finding = newFinding(
    recordUsed,
    { subject: null, place: locate(world, first, "").place },
    {
      key: keyOf("record-used", null, "originals"),
      message: `nothing in the book names ${ids.length} originals: ${ids.slice(0, shown).join(", ")}${more}`,
      why: "no link of any record leads to them, and none was imported from them",
      hint: "name each as the source of what was read from it; the command originals proposes which record it belongs to",
      about: ids.join(" "),
      related: unnamed.slice(0, 20).map((record) => {
        const { subject, place } = locate(world, record, "");
        return { subject, place, message: "nothing names it" };
      }),
    },
  );
  addFinding(court, finding);
}

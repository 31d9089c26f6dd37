import type { Origin } from "../model/book.ts";
import { isList, isObject, pointerStep, type Json, holderOf, listAround } from "../model/json.ts";
import type { Field } from "../model/kind.ts";
import { parsePath, printStep, printSteps, type Path, type Step } from "../model/path.ts";
import { ProgramError } from "../model/program-error.ts";
import { addressOf } from "../model/record.ts";
import { missingField, noneBack, noneInBook } from "./absent.ts";
import { deref, fieldIn, miss, readText, startAt, type Hit, type Walk } from "./hit.ts";
import { linksOf } from "./links-back.ts";
import { lookUp } from "./look-up.ts";
import { noteKind, notePlace } from "./notes.ts";
import { noRow } from "./reasons.ts";
import { resultsOf, symbolOf } from "./results.ts";
import { groupsOf, type Group } from "./step-groups.ts";
import { clear, newTrail, noteAddress, noteRead, noteValue, type Trail } from "./trail.ts";
import type { World } from "./world.ts";

/**
 * Follows a path. Reads, doubts, absences and own reasons for not judging are noted in the trail; what comes back is
 * every value the path leads to. `wanted` false leaves no absence of the value itself behind; a link to a record that
 * is not there, and a filter that cannot be answered, always do.
 */
export function follow(world: World, path: Pick<Path, "steps">, start: Hit | null, trail: Trail, wanted = true): Hit[] {
  const walk: Walk = { world, trail, wanted, skipped: false };
  let hits: readonly (Hit | null)[] = [start];
  for (const group of groupsOf(path.steps)) {
    const [only = null] = hits;
    hits = hits.length === 1 ? followGroup(walk, group, only) : hits.flatMap((hit) => followGroup(walk, group, hit));
  }
  const found = hits.filter((hit) => hit !== null);
  if (found.length > 0 || !wanted) return found;
  if (walk.skipped) trail.inapplicable = true;
  // Silence is never a pass: whatever ends a path must have said why.
  if (clear(trail)) throw new ProgramError(`path "${printSteps(path.steps)}" leads to nothing and does not say why`);
  return found;
}

function followGroup(walk: Walk, { head, tail, filters }: Group, hit: Hit | null): readonly Hit[] {
  let hits = head === null ? (hit === null ? [] : [hit]) : advance(walk, head, hit, filters);
  if (hits.length === 0 || tail.length === 0) return hits;
  const { absences, doubts } = walk.trail;
  const open = absences.length + doubts.length;
  for (const step of tail)
    hits = step.type === "filter" ? filtered(walk, step, hits) : hits.flatMap((one) => items(walk, one));
  // A candidate whose filter cannot be answered may be the one that is asked for.
  if (hits.length === 0 && head !== null && absences.length + doubts.length === open)
    nothingLeft(walk, head, hit, filters);
  return hits;
}

function filtered(
  { world, trail }: Walk,
  step: Extract<Step, { type: "filter" }>,
  hits: readonly Hit[],
): readonly Hit[] {
  const candidates = hits.flatMap((hit) => (isList(hit.value) ? itemsOf(hit, hit.value) : [hit]));
  return candidates.filter((hit) =>
    follow(world, { steps: step.path }, hit, trail).some((found) => readText(world, found, trail) === step.equals),
  );
}

function items({ world, trail }: Walk, hit: Hit): readonly Hit[] {
  if (isList(hit.value)) return itemsOf(hit, hit.value);
  // The schema wants a list here and has objected.
  if (hit.record !== null) noteRead(world, trail, hit.record, hit.pointer, hit.value);
  return [];
}

function itemsOf(hit: Hit, list: readonly Json[]): readonly Hit[] {
  const field = hit.field?.item ?? null;
  return list.map((value, index) => {
    const pointer = `${hit.pointer}/${index}`;
    if (hit.record === null) return within(hit, value, field);
    return { value, field, origin: { type: "record", record: hit.record, pointer }, record: hit.record, pointer };
  });
}

function advance(walk: Walk, step: Step, hit: Hit | null, filters: readonly Step[]): readonly Hit[] {
  const { world, trail, wanted } = walk;
  switch (step.type) {
    case "all": {
      const records = [...(world.graph.byKind.get(step.kind)?.values() ?? [])];
      trail.lists.push(step.kind);
      noteKind(world, step.kind);
      if (records.length === 0) miss(walk, noneInBook(step.kind, filters), null);
      return records.map((record) => startAt(world, record, ""));
    }
    case "profile": {
      const parameter = world.parameters.get(step.name);
      if (parameter === undefined) throw new ProgramError(`the profile has no parameter "${step.name}"`);
      for (const place of parameter.places ?? []) noteAddress(world, trail, place, "");
      noteValue(trail, `profile:${step.name}`, parameter.value);
      trail.bases.push([`parameter ${step.name} of the profile`, parameter.basis]);
      return [outside(parameter.value, { type: "profile", name: step.name, basis: parameter.basis })];
    }
    case "table":
      return lookUp(world, step, hit, trail, (path, own) => follow(world, path, hit, own, wanted));
    case "field":
      return hit === null ? [] : toField(walk, hit, step.name, filters);
    case "record":
      return hit === null ? [] : recordOf(world, deref(walk, hit));
    case "back":
      return hit === null ? [] : back(walk, hit, step, filters);
    case "calculation": {
      const at = hit === null ? null : deref(walk, hit);
      return at === null ? [] : resultsOf(walk, at, step.id);
    }
    case "items":
    case "filter":
      return hit === null ? [] : [hit];
  }
}

/** There were candidates, but the list is empty or none passes the filter: absent just as if there had been none. */
function nothingLeft(walk: Walk, head: Step, hit: Hit | null, filters: readonly Step[]): void {
  if (head.type === "all") {
    miss(walk, noneInBook(head.kind, filters), null);
    return;
  }
  const from = hit === null ? null : deref(walk, hit);
  if (from?.record == null) throw new ProgramError(`nothing can be missing outside the records (${printStep(head)})`);
  const { record, pointer } = from;
  if (head.type === "back") miss(walk, noneBack(record, pointer, head, filters), { record, pointer });
  else {
    const name = printStep(head);
    miss(walk, missingField(record, pointer, name, filters), { record, pointer: pointer + pointerStep(name) });
  }
}

/** A value inside of one that stands in no record. */
function within({ origin, record, pointer, asked }: Hit, value: Json, field: Field | null): Hit {
  return asked === undefined
    ? { value, field, origin, record, pointer }
    : { value, field, origin, record, pointer, asked };
}

function outside(value: Json, origin: Origin): Hit {
  return { value, field: null, origin, record: null, pointer: "" };
}

function toField(walk: Walk, from: Hit, name: string, filters: readonly Step[]): readonly Hit[] {
  if (from.origin?.type === "calculation") return symbolOf(walk, from.origin.of, name);
  const hit = deref(walk, from);
  if (hit === null) return [];
  if (!isObject(hit.value)) {
    // The schema wants an object here and has objected.
    if (hit.record !== null) noteRead(walk.world, walk.trail, hit.record, hit.pointer, hit.value);
    return [];
  }
  const value = Object.hasOwn(hit.value, name) ? hit.value[name] : undefined;
  const pointer = pointerBelow(hit.pointer, name);
  if (hit.record !== null) notePlace(walk.world, hit.record, pointer);
  if (value === undefined || (isList(value) && value.length === 0)) {
    if (hit.asked !== undefined && walk.wanted) noRow(walk.trail, hit.asked, `the row has no ${name}`, name);
    if (hit.record === null) return [];
    const instead = fieldIn(walk.world, hit, name)?.instead;
    // One value for all that state none of their own; where others do, this one owes its own.
    const own = addressOf(hit.record, pointer);
    const sure = instead !== undefined && walk.world.ledger.doubts(own).length === 0;
    // One value for all that state none of their own; where it is missing too and others have their own, so must this one.
    if (sure && (isThere(walk.world, instead) || !othersState(walk.world, hit.record.kind, name))) {
      noteAddress(walk.world, walk.trail, own, "absent");
      return follow(walk.world, parsePath(instead), null, walk.trail, walk.wanted);
    }
    miss(walk, missingField(hit.record, hit.pointer, name, filters), { record: hit.record, pointer });
    return [];
  }
  const field = fieldIn(walk.world, hit, name);
  if (hit.record === null) return [within(hit, value, field)];
  return [{ value, field, origin: { type: "record", record: hit.record, pointer }, record: hit.record, pointer }];
}

const below = new Map<string, string>();

/** Pointer of a field below another; of fields of records themselves always the same text, of which notes hold thousands. */
function pointerBelow(pointer: string, name: string): string {
  if (pointer !== "") return pointer + pointerStep(name);
  let step = below.get(name);
  if (step === undefined) below.set(name, (step = pointerStep(name)));
  return step;
}

/** A value, sound or in doubt. */
function isThere(world: World, path: string): boolean {
  const trail = newTrail();
  return follow(world, parsePath(path), null, trail, false).length > 0 || trail.doubts.length > 0;
}

function othersState(world: World, kind: string, name: string): boolean {
  noteKind(world, kind);
  return [...(world.graph.byKind.get(kind)?.values() ?? [])].some((record) => {
    notePlace(world, record, pointerStep(name));
    return Object.hasOwn(record.value, name);
  });
}

/** Objects that hold a link here; from a row, links to the row or to its whole record. */
function back(walk: Walk, from: Hit, step: Extract<Step, { type: "back" }>, filters: readonly Step[]): readonly Hit[] {
  const { world, trail } = walk;
  const hit = deref(walk, from);
  if (hit?.record == null) return [];
  const { record, pointer } = hit;
  trail.lists.push(step.kind);
  const direct = linksOf(world, addressOf(record, pointer), step);
  const whole = pointer === "" ? [] : linksOf(world, addressOf(record), step).filter((link) => link.toPointer === "");
  const found = new Map<string, Hit>();
  for (const link of [...direct, ...whole]) {
    noteRead(world, trail, link.from, link.pointer, link.text);
    const object = holderOf(listAround(link.pointer));
    const address = addressOf(link.from, object);
    if (!found.has(address)) found.set(address, startAt(world, link.from, object));
  }
  if (found.size === 0) miss(walk, noneBack(record, pointer, step, filters), { record, pointer });
  return [...found.values()];
}

function recordOf(world: World, hit: Hit | null): Hit[] {
  return hit?.record == null ? [] : [startAt(world, hit.record, "")];
}

import { fieldSteps, isEachStep, stepName } from "../model/field-steps.ts";
import { ownChoice } from "../model/basis.ts";
import type { Link } from "../model/graph.ts";
import { isList, isObject, pointerStep, type Json } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import type { Milestone } from "../model/vocabulary.ts";
import { fieldOfLink } from "../link/graph.ts";
import { absentTarget, missingField } from "../reading/absent.ts";
import type { Court } from "../court/court.ts";
import type { World } from "../reading/world.ts";

/** Registers every field that is owed and not there. Whether it is due yet is decided with all other absences. */
export function wantFields(court: Court): void {
  for (const record of court.world.graph.records) {
    const kind = court.world.kinds.get(record.kind);
    if (kind !== undefined && !kind.derived) wantIn(court, record, "", record.value, kind.fields);
  }
}

function wantIn(
  court: Court,
  record: BookRecord,
  pointer: string,
  value: Json,
  fields: ReadonlyMap<string, Field>,
): void {
  if (!isObject(value)) return;
  for (const [name, field] of fields) {
    const member = Object.hasOwn(value, name) ? value[name] : undefined;
    const inner = pointer + pointerStep(name);
    if (member === undefined || (isList(member) && member.length === 0)) {
      const instead = field.unless !== undefined && Object.hasOwn(value, field.unless);
      if (field.due === undefined || instead || court.world.ledger.doubts(addressOf(record, inner)).length > 0)
        continue;
      court.wants.push({
        absence: missingField(record, pointer, name),
        by: null,
        due: field.due,
        basis: ownChoice(`${record.kind} records state it: ${field.description}`),
        owner: field.owner ?? "document control",
      });
    } else if (isList(member)) {
      const item = field.item?.fields;
      if (item !== undefined) member.forEach((row, index) => wantIn(court, record, `${inner}/${index}`, row, item));
    } else if (field.fields !== undefined) wantIn(court, record, inner, member, field.fields);
  }
}

/**
 * Registers every record that a link names and the book does not hold. It is due at once when the naming record tells
 * of an event or cannot be without the link, else as its field or the row of the register that asks for it.
 */
export function wantLinks(court: Court): void {
  const { world } = court;
  for (const links of world.graph.absent.values())
    for (const link of links) {
      if (link.target === null || world.ledger.doubts(addressOf(link.from, link.pointer)).length > 0) continue;
      court.wants.push({
        absence: absentTarget(link.from, link.pointer, link.target),
        by: null,
        due: dueOfLink(world, link),
        basis: ownChoice("what a record names is in the book"),
        owner: "document control",
      });
    }
}

function dueOfLink(world: World, link: Link): Milestone | null {
  const field = fieldOfLink(link, world.kinds);
  if (field?.required === true || tellsOfEvent(world.kinds.get(link.from.kind), link.from)) return "now";
  return dueAlong(world.kinds.get(link.from.kind), link.path);
}

/** Milestone of the field a link stands in, or of the list or object around it. */
function dueAlong(kind: Kind | undefined, path: string): Milestone | null {
  let fields = kind?.fields;
  let due: Milestone | null = null;
  for (const step of fieldSteps(path)) {
    let field = fields?.get(stepName(step));
    due = field?.due ?? due;
    if (isEachStep(step)) field = field?.item;
    due = field?.due ?? due;
    fields = field?.fields;
  }
  return due;
}

function tellsOfEvent(kind: Kind | undefined, record: BookRecord): boolean {
  return hasEvent(record.value, kind?.fields);
}

function hasEvent(value: Json, fields: ReadonlyMap<string, Field> | undefined): boolean {
  if (!isObject(value) || fields === undefined) return false;
  return [...fields].some(([name, field]) => {
    const member = Object.hasOwn(value, name) ? value[name] : undefined;
    if (member === undefined) return false;
    if (field.date === "event") return true;
    if (isList(member)) return member.some((row) => hasEvent(row, field.item?.fields));
    return hasEvent(member, field.fields);
  });
}

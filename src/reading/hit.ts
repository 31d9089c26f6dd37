import type { Origin } from "../model/book.ts";
import { atPointer, type Json } from "../model/json.ts";
import type { Field } from "../model/kind.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { fieldOfPointer } from "../model/stable.ts";
import { absentTarget } from "./absent.ts";
import type { Asked } from "./reasons.ts";
import { notePlace } from "./notes.ts";
import { noteAddress, noteRead, type Trail } from "./trail.ts";
import type { Absence, World } from "./world.ts";

/** Where a path has got to: a value in a record, or one that comes from a table, the profile or a calculation. */
export interface Hit {
  readonly value: Json;
  readonly field: Field | null;
  readonly origin: Origin | null;
  /** The record it stands in; null outside records. */
  readonly record: BookRecord | null;
  readonly pointer: string;
  /** Of a row of a table: what was asked for. */
  readonly asked?: Asked;
}

/** One way along a path. */
export interface Walk {
  readonly world: World;
  readonly trail: Trail;
  /** False (optional, `exists`): what is absent is no absence. */
  readonly wanted: boolean;
  /** A result was left out because its calculation does not apply. */
  skipped: boolean;
}

/** A record, or a place in one, as the beginning of a way. */
export function startAt(world: World, record: BookRecord, pointer: string): Hit {
  const origin = { type: "record", record, pointer } as const;
  notePlace(world, record, pointer);
  if (pointer === "") return { value: record.value, field: null, origin, record, pointer };
  const field = fieldOfPointer(world.kinds.get(record.kind)?.fields, record.value, pointer) ?? null;
  return { value: atPointer(record.value, pointer) ?? null, field, origin, record, pointer };
}

/** Notes an absence, unless a finding throws doubt on the place: an accused place is never absent. */
export function miss({ world, trail, wanted }: Walk, absence: Absence, at: Absence["owner"]): void {
  if (at !== null) {
    const address = addressOf(at.record, at.pointer);
    noteAddress(world, trail, address, "absent");
    if (world.ledger.doubts(address).length > 0) return;
  }
  if (wanted) trail.absences.push(absence);
}

/** The text of a hit, noted as read. */
export function readText(world: World, hit: Hit, trail: Trail): string | undefined {
  if (hit.record !== null) noteRead(world, trail, hit.record, hit.pointer, hit.value);
  return typeof hit.value === "object" ? undefined : String(hit.value);
}

/** Goes through a link to the record or row it names; any other hit stays where it is. Null: the link leads nowhere. */
export function deref(walk: Pick<Walk, "world" | "trail">, hit: Hit): Hit | null {
  const { world, trail } = walk;
  if (hit.field?.type !== "link" || hit.record === null) return hit;
  noteRead(world, trail, hit.record, hit.pointer, hit.value);
  const link = world.graph.out.get(hit.record)?.get(hit.pointer);
  if (link?.to !== undefined) {
    noteRead(world, trail, link.to, "/id", link.to.id);
    if (link.toPointer !== undefined && link.toPointer !== "")
      noteRead(world, trail, link.to, link.toPointer, undefined);
    return startAt(world, link.to, link.toPointer ?? "");
  }
  if (link?.state === "absent" && link.target !== null) {
    const absence = absentTarget(hit.record, hit.pointer, link.target);
    miss({ world, trail, wanted: true, skipped: false }, absence, { record: hit.record, pointer: hit.pointer });
  }
  return null;
}

/** The field of a name in what a hit stands at, as the schema describes it. */
export function fieldIn(world: World, hit: Hit, name: string): Field | null {
  const fields =
    hit.pointer === "" && hit.record !== null ? world.kinds.get(hit.record.kind)?.fields : hit.field?.fields;
  return fields?.get(name) ?? null;
}

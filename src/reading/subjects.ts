import { isList } from "../model/json.ts";
import type { Subject } from "../model/finding.ts";
import type { Condition } from "../model/input.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { pathOf } from "./bind.ts";
import { follow } from "./follow.ts";
import { handleOf } from "./handle.ts";
import { readText, startAt, type Hit } from "./hit.ts";
import { clear, mergeTrail, newTrail, noteRead, type Trail } from "./trail.ts";
import type { World } from "./world.ts";
import { kindText } from "../model/kind-text.ts";

/** Something a definition can be applied to: a record, or a row of one. */
export interface Applicant {
  readonly record: BookRecord;
  readonly pointer: string;
  readonly address: Address;
  readonly hit: Hit;
  readonly subject: Subject;
}

/** Something a definition is applied to. */
export interface Case extends Applicant {
  /** Its identity is read already. */
  readonly trail: Trail;
}

const found = new WeakMap<World, Map<string, readonly Applicant[]>>();

/** Every record of a kind, or every row of `kind#list`. */
export function subjectsOf(world: World, of: string): readonly Applicant[] {
  const known = found.get(world) ?? new Map<string, readonly Applicant[]>();
  found.set(world, known);
  let all = known.get(of);
  if (all === undefined) known.set(of, (all = [...applicants(world, of)]));
  return all;
}

function* applicants(world: World, of: string): Generator<Applicant> {
  const { kind, list } = kindText(of);
  for (const record of world.graph.byKind.get(kind)?.values() ?? []) {
    const rows = list === "" ? undefined : record.value[list];
    const pointers = list === "" ? [""] : isList(rows) ? rows.map((_row, index) => `/${list}/${index}`) : [];
    for (const pointer of pointers) {
      const hit = startAt(world, record, pointer);
      const address = addressOf(record, pointer);
      yield { record, pointer, address, hit, subject: { kind, id: handleOf(world, hit).id } };
    }
  }
}

/** A subject with a new trail. */
export function caseOf(world: World, one: Applicant): Case {
  const { record, pointer, address, hit, subject } = one;
  const trail = newTrail();
  noteRead(world, trail, record, "/id", record.id);
  if (pointer !== "") noteRead(world, trail, record, pointer, undefined);
  return { record, pointer, address, hit, subject, trail };
}

/**
 * Whether a definition applies: every condition holds. When one is false for certain, the trail holds no more than
 * what made it so; when an absent or doubted place leaves the answer open, the trail says so, the caller concludes
 * *not judged*, and nothing else is read.
 */
export function holds(world: World, conditions: readonly Condition[] | undefined, start: Hit, trail: Trail): boolean {
  if (conditions === undefined || conditions.length === 0) return true;
  const all = newTrail();
  for (const condition of conditions) {
    const one = newTrail();
    const met = meets(world, condition, start, one);
    if (!met && (clear(one) || one.inapplicable)) {
      mergeTrail(trail, one);
      return false;
    }
    mergeTrail(all, one);
  }
  mergeTrail(trail, all);
  return clear(all);
}

function meets(world: World, condition: Condition, start: Hit, trail: Trail): boolean {
  const hits = follow(world, pathOf(condition.path), start, trail, condition.exists === undefined);
  if (condition.exists !== undefined) {
    for (const hit of hits) readText(world, hit, trail);
    return hits.length > 0 === condition.exists;
  }
  const wanted = Array.isArray(condition.equals) ? condition.equals : [condition.equals];
  return hits.some((hit) => {
    readText(world, hit, trail);
    return wanted.includes(hit.value);
  });
}

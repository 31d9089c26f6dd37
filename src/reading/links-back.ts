import type { Link } from "../model/graph.ts";
import type { Step } from "../model/path.ts";
import { noteBack, fieldName } from "./notes.ts";
import type { World } from "./world.ts";
import type { Address } from "../model/record.ts";

const byField = new WeakMap<readonly Link[], ReadonlyMap<string, readonly Link[]>>();

/** Links of one field of one kind that lead to an address; sorted out once, since some records are named by thousands. */
export function linksOf(
  world: World,
  address: Address,
  { kind, field }: Extract<Step, { type: "back" }>,
): readonly Link[] {
  noteBack(world, address, kind, field);
  const all = world.graph.back.get(address);
  if (all === undefined) return [];
  let sorted = byField.get(all);
  if (sorted === undefined) {
    const fresh = new Map<string, Link[]>();
    for (const link of all) {
      const name = fieldName(link.from.kind, link.path);
      const list = fresh.get(name);
      if (list === undefined) fresh.set(name, [link]);
      else list.push(link);
    }
    byField.set(all, (sorted = fresh));
  }
  return sorted.get(fieldName(kind, field)) ?? [];
}

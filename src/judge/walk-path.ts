import { follow, startAt } from "./follow.ts";
import { newLedger } from "./ledger.ts";
import { newTrail } from "./trail.ts";
import type { World } from "./world.ts";
import type { JudgedBook } from "../model/book.ts";
import type { Path } from "../model/path.ts";
import type { BookRecord } from "../model/record.ts";

const worlds = new WeakMap<JudgedBook, World>();

/** Follows a path after judging: the same steps as judging takes, but nothing is noted or wanted. Ends behind links. */
export function walkPath(
  judged: JudgedBook,
  from: BookRecord,
  path: Path,
): { readonly record: BookRecord; readonly pointer: string }[] {
  let world = worlds.get(judged);
  if (world === undefined) {
    world = {
      graph: judged.graph,
      definitions: judged.definitions,
      kinds: judged.definitions.kinds,
      parameters: judged.parameters,
      tables: judged.tables,
      ledger: newLedger(),
      computed: new Map(),
    };
    worlds.set(judged, world);
  }
  return follow(world, path, startAt(world, from, ""), newTrail(), false).flatMap((hit) => {
    if (hit.record === null) return [];
    const link = hit.field?.type === "link" ? judged.graph.out.get(hit.record)?.get(hit.pointer) : undefined;
    if (hit.field?.type === "link")
      return link?.to === undefined ? [] : [{ record: link.to, pointer: link.toPointer ?? "" }];
    return [{ record: hit.record, pointer: hit.pointer }];
  });
}

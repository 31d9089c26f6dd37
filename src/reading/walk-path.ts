import { follow } from "./follow.ts";
import { deref, startAt } from "./hit.ts";
import { newLedger } from "./ledger.ts";
import { newTrail, type Trail } from "./trail.ts";
import type { Absence, World } from "./world.ts";
import type { JudgedBook } from "../model/book.ts";
import type { Absent } from "../model/missing.ts";
import { blocks } from "../model/finding.ts";
import type { Path } from "../model/path.ts";
import type { BookRecord } from "../model/record.ts";
import { isFiltered, isNoneBack } from "./absent.ts";

const worlds = new WeakMap<JudgedBook, World>();

/** A record, or a place in one, that a path leads to. */
export interface Walked {
  readonly record: BookRecord;
  readonly pointer: string;
}

/** Follows a path after judging: the same steps as judging takes, but nothing is noted or wanted. Ends behind links. */
export const walkPath = (judged: JudgedBook, from: BookRecord, path: Path): readonly Walked[] =>
  walk(judged, from, path, newTrail(), false);

/** Where a path leads, and what stands in its way. */
export interface Evidence {
  readonly hits: readonly Walked[];
  /** Open findings for whose sake it leads no further, or not surely. */
  readonly open: readonly string[];
  /** Milestones before which what it leads to is not owed. */
  readonly notDue: readonly string[];
}

/** The same, with what stands in the way of more. */
export function walkEvidence(judged: JudgedBook, from: BookRecord, path: Path): Evidence {
  const trail = newTrail();
  const hits = walk(judged, from, path, trail, true);
  const absent = trail.absences.flatMap((absence) => becameOf(judged, absence));
  const keys = absent.flatMap((one) => ("finding" in one ? [one.finding] : "explained" in one ? one.explained : []));
  const open = openFindings(judged);
  return {
    hits,
    open: [...new Set([...trail.doubts, ...keys])].filter((key) => open.has(key)),
    notDue: [...new Set(absent.flatMap((one) => ("notDue" in one ? [one.notDue] : [])))],
  };
}

/**
 * What became of something absent. A chain may ask for any report of a joint where the register asks for one of a method,
 * and for any pressure test where it asks for that of the equipment: what became of these counts then.
 */
function becameOf({ absent }: JudgedBook, { key, owner, kind }: Absence): readonly Absent[] {
  const exact = absent.get(key);
  if (exact !== undefined) return [exact];
  const same =
    owner === null ? (other: string) => isNoneBack(other, kind ?? "") : (other: string) => isFiltered(other, key);
  return [...absent].flatMap(([other, became]) => (same(other) ? [became] : []));
}

const opens = new WeakMap<JudgedBook, ReadonlySet<string>>();

function openFindings(judged: JudgedBook): ReadonlySet<string> {
  let open = opens.get(judged);
  if (open === undefined) opens.set(judged, (open = new Set(judged.findings.filter(blocks).map(({ key }) => key))));
  return open;
}

/** A judged book as paths are followed in it: nothing is computed there, and nothing noted. */
export function worldOf(judged: JudgedBook): World {
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
    for (const { accuses, key, severity } of judged.findings)
      if (severity !== "note") world.ledger.accuse(accuses, key);
    worlds.set(judged, world);
  }
  return world;
}

function walk(judged: JudgedBook, from: BookRecord, path: Path, trail: Trail, wanted: boolean): readonly Walked[] {
  const world = worldOf(judged);
  return follow(world, path, startAt(world, from, ""), trail, wanted).flatMap((hit) => {
    const at = deref({ world, trail }, hit);
    return at?.record == null ? [] : [{ record: at.record, pointer: at.pointer }];
  });
}

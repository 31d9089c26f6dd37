import type { Owing as OwedPlace } from "../model/owing.ts";
import { addressOf } from "../model/record.ts";
import { pathOf } from "../reading/bind.ts";
import type { Court } from "../court/court.ts";
import { follow } from "../reading/follow.ts";
import type { Hit } from "../reading/hit.ts";
import type { OwedInput, Owing } from "../plan/owed-inputs.ts";
import { caseOf, holds, subjectsOf } from "../reading/subjects.ts";
import { newTrail, type Trail } from "../reading/trail.ts";
import type { World } from "../reading/world.ts";

/** What definitions are owed at one path of a record or row, before it is known whether what is missing is due. */
export interface DraftOwing extends Pick<OwedPlace, "path" | "subject" | "pointer"> {
  readonly by: readonly OwedInput[];
  /** Keys of absences; none: it is there, unless something on the way is doubted. */
  readonly absences: readonly string[];
  readonly doubted: boolean;
}

/**
 * Registers what definitions are owed and nobody has recorded, on the basis of the definition that reads it. Where a
 * condition cannot be answered or the way is doubted, that is said where it was found, and nothing is owed before.
 */
export function wantOwed(court: Court, owing: readonly Owing[]): readonly DraftOwing[] {
  const { world } = court;
  const drafts = new Map<string, DraftOwing>();
  for (const { kind, when, paths } of owing)
    for (const { record, pointer, hit, trail: own } of subjectsOf(world, kind).map((one) => caseOf(world, one))) {
      const asked = newTrail();
      const applies = holds(world, when, hit, asked);
      // What makes a condition unanswerable is wanted by the definition itself.
      if (!applies) continue;
      for (const [path, by] of paths) {
        const trail = newTrail();
        followLegs(world, by, hit, trail);
        if (trail.inapplicable) continue;
        const doubted = own.doubts.length + trail.doubts.length + trail.reasons.length > 0;
        if (!doubted)
          for (const absence of trail.absences)
            for (const { due, owner, by: reader } of by)
              court.wants.push({ absence, by: null, due, basis: reader.basis, owner, reader: reader.title });
        const key = `${addressOf(record, pointer)} ${path}`;
        const before = drafts.get(key);
        drafts.set(key, {
          path,
          subject: record,
          pointer,
          by: [...(before?.by ?? []), ...by],
          absences: trail.absences.map((one) => one.key),
          doubted,
        });
      }
    }
  return [...drafts.values()];
}

/** Follows the parts of a path: where what only leads on is not there, nothing is owed behind it. */
function followLegs(world: World, by: readonly OwedInput[], start: Hit, trail: Trail): void {
  let hits: readonly Hit[] = [start];
  for (const { path, owed } of by[0]?.legs ?? [])
    hits = hits.flatMap((hit) => follow(world, pathOf(path), hit, trail, owed));
}

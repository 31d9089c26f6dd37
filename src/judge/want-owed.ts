import type { Owing as OwedPlace } from "../model/owing.ts";
import { pathOf } from "../reading/bind.ts";
import type { Court } from "../court/court.ts";
import { follow } from "../reading/follow.ts";
import type { Hit } from "../reading/hit.ts";
import type { OwedInput, Owing } from "../plan/owed-inputs.ts";
import { caseOf, holds, subjectsOf, type Applicant } from "../reading/subjects.ts";
import { newTrail, type Trail } from "../reading/trail.ts";
import { newVisits } from "../reading/visits.ts";
import type { Absence, World } from "../reading/world.ts";

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
  for (const group of owing)
    for (const one of subjectsOf(world, group.kind)) {
      const { record, pointer, address } = one;
      for (const { path, by, absences, doubted } of visit(world, group, address, () => lookFor(world, group, one))) {
        if (!doubted)
          for (const absence of absences)
            for (const { due, owner, by: reader } of by)
              court.wants.push({ absence, by: null, due, basis: reader.basis, owner, reader: reader.title });
        const key = `${address} ${path}`;
        const before = drafts.get(key);
        drafts.set(key, {
          path,
          subject: record,
          pointer,
          by: before === undefined ? by : [...before.by, ...by],
          absences: absences.map((absence) => absence.key),
          doubted,
        });
      }
    }
  return [...drafts.values()];
}

/** What was found at one path. */
interface Looked {
  readonly path: string;
  readonly by: readonly OwedInput[];
  readonly absences: readonly Absence[];
  readonly doubted: boolean;
}

const visit = newVisits<readonly Looked[]>((found) => found.some(({ absences }) => absences.length > 0));

function lookFor(world: World, { when, paths }: Owing, subject: Applicant): readonly Looked[] {
  const { hit, trail: own } = caseOf(world, subject);
  // What makes a condition unanswerable is wanted by the definition itself.
  if (!holds(world, when, hit, newTrail())) return [];
  return [...paths].flatMap(([path, by]) => {
    const trail = newTrail();
    followLegs(world, by, hit, trail);
    if (trail.inapplicable) return [];
    const doubted = own.doubts.length + trail.doubts.length + trail.reasons.length > 0;
    return [{ path, by, absences: trail.absences, doubted }];
  });
}

/** Follows the parts of a path: where what only leads on is not there, nothing is owed behind it. */
function followLegs(world: World, by: readonly OwedInput[], start: Hit, trail: Trail): void {
  let hits: readonly Hit[] = [start];
  for (const { path, owed } of by[0]?.legs ?? [])
    hits = hits.flatMap((hit) => follow(world, pathOf(path), hit, trail, owed));
}

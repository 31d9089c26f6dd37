import type { Absent, Missing } from "../model/missing.ts";
import { grouped } from "../model/grouped.ts";
import { byCodePoint } from "../model/order.ts";
import type { Gap } from "./absences.ts";
import { partsOf } from "./missing-parts.ts";
import { dueOf, gapKey, missingOf } from "./gap-finding.ts";
import type { Calendar } from "./milestones.ts";
import type { World } from "../reading/world.ts";

/**
 * What is absent, each thing once, by the key of its gap. A kind of which there is no record at all is owed at several
 * milestones: it is listed at the first, as its finding is.
 */
export function missingIn(
  world: World,
  gaps: readonly Gap[],
  of: ReadonlyMap<string, Gap>,
  results: ReadonlyMap<Gap, Absent>,
  calendar: Calendar,
): readonly Missing[] {
  const absences = grouped([...of], ([, gap]) => gap);
  const byKey = grouped(
    gaps.filter((gap) => results.has(gap)),
    (gap) => gapKey(world, gap),
  );
  return [...byKey]
    .sort(([a], [b]) => byCodePoint(a, b))
    .flatMap(([, same]) => {
      const [first] = [...same].sort((a, b) => calendar.rank(dueOf(a, calendar)) - calendar.rank(dueOf(b, calendar)));
      const became = first === undefined ? undefined : results.get(first);
      if (first === undefined || became === undefined) return [];
      const keys = same.flatMap((gap) => (absences.get(gap) ?? []).map(([key]) => key));
      const { owner, target } = first.absence;
      const parts = owner === null || target !== null ? partsOf(world, same) : [];
      return [
        {
          ...missingOf(world, first, dueOf(first, calendar), became),
          absences: keys.sort(byCodePoint),
          ...(parts.length > (target === null ? 0 : 1) && { parts }),
        },
      ];
    });
}

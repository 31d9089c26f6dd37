import type { Announcement } from "../model/announcement.ts";
import type { Computed, JudgedBook } from "../model/book.ts";
import { pathOf } from "../reading/bind.ts";
import { follow } from "../reading/follow.ts";
import { deref, startAt } from "../reading/hit.ts";
import { holds } from "../reading/subjects.ts";
import { newTrail } from "../reading/trail.ts";
import { worldOf, type Walked } from "../reading/walk-path.ts";

/** The measurements that limits of this calculation are for, as far as they are recorded: the places the values stand in. */
export function awaitedBy(judged: JudgedBook, { calculation, subject, pointer }: Computed): readonly Walked[] {
  const world = worldOf(judged);
  const start = startAt(world, subject, pointer);
  const found = (calculation.announces ?? []).flatMap(({ awaits, when }: Pick<Announcement, "awaits" | "when">) => {
    if (!holds(world, when, start, newTrail())) return [];
    const trail = newTrail();
    return follow(world, pathOf(awaits), start, trail, false).flatMap((hit) => {
      const at = deref({ world, trail }, hit);
      return at?.record == null ? [] : [{ record: at.record, pointer: at.pointer }];
    });
  });
  return found;
}

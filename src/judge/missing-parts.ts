import type { MissingPart } from "../model/missing.ts";
import { grouped } from "../model/grouped.ts";
import { byCodePoint } from "../model/order.ts";
import { adoptable } from "../compute/adoption.ts";
import type { Gap } from "./absences.ts";
import type { Absence, World } from "../reading/world.ts";

/**
 * What gaps about a whole kind are about one by one: what each record or row asks for, and each record that links name. Who asks for any of
 * its records is told of the certain ones it asks for.
 */
export function partsOf(world: World, gaps: readonly Gap[]): readonly MissingPart[] {
  const all = new Map(gaps.flatMap(({ wants }) => wants).map(({ absence }) => [absence.key, absence]));
  const asked = [...all.values()].filter(({ owner, kind }) => owner !== null && kind !== null);
  const bySource = grouped(asked, ({ key, filters }) => key.slice(0, key.length - filters.length));
  return [...bySource.values()]
    .flatMap((list) => list.filter((one) => !list.some((other) => isNarrower(other, one))))
    .sort((a, b) => byCodePoint(a.key, b.key))
    .map((absence) => partOf(world, absence));
}

const filtersOf = (filters: string): readonly string[] => filters.match(/\[[^\]"]*"[^"]*"\]/g) ?? [];

function isNarrower(other: Absence, one: Absence): boolean {
  const [more, own] = [filtersOf(other.filters), filtersOf(one.filters)];
  return more.length > own.length && own.every((filter) => more.includes(filter));
}

function partOf(world: World, absence: Absence): MissingPart {
  const { owner, step, filters, target, short } = absence;
  const figures = adoptable(world, absence);
  return {
    at: owner,
    step: `${step}${filters}`,
    target,
    ...(short !== undefined && { short: { found: short.found.length, atLeast: short.atLeast } }),
    ...(figures !== undefined && { adoptable: figures }),
  };
}

import { addressOf } from "../model/record.ts";
import { readText, type Hit } from "./hit.ts";
import { severalValues } from "./reasons.ts";
import type { Trail } from "./trail.ts";
import type { World } from "./world.ts";

/**
 * The hit of a path that is read for one value. Several that state the same are one; several that differ are an own
 * reason for not judging, since choosing one would be a guess.
 */
export function onlyOne(
  world: World,
  hits: readonly Hit[],
  trail: Trail,
  start: Hit | null,
  path: string,
): Hit | undefined {
  if (hits.length < 2) return hits[0];
  const texts = hits.map((hit) => {
    if (typeof hit.value !== "object") return readText(world, hit, trail) ?? "";
    return hit.record === null ? JSON.stringify(hit.value) : addressOf(hit.record, hit.pointer);
  });
  if (texts.every((text) => text === texts[0])) return hits[0];
  severalValues(world, trail, start, path, texts);
  return undefined;
}

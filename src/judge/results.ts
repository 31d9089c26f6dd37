import type { Done } from "../model/book.ts";
import { addressOf } from "../model/record.ts";
import { stablePath } from "../model/stable.ts";
import type { Hit, Walk } from "./follow.ts";
import { noteAddress, noteValue } from "./trail.ts";
import { calculationKey } from "./world.ts";

/** A calculation on what a path has reached. What it waits for, whoever reads it waits for too. */
export function resultsOf(walk: Walk, hit: Hit, id: string): readonly Hit[] {
  const { world, trail } = walk;
  if (hit.record === null) return [];
  const done = world.computed.get(calculationKey(id, hit.record, hit.pointer));
  if (done === undefined) {
    walk.skipped = true;
    return [];
  }
  if ("pending" in done) {
    trail.doubts.push(...done.findings);
    trail.absences.push(...done.absences);
    walk.skipped ||= done.notApplicable;
    return [];
  }
  for (const address of done.reads) noteAddress(world, trail, address, "");
  return [{ value: {}, field: null, origin: { type: "calculation", of: done, symbol: "" }, record: null, pointer: "" }];
}

/** One result; of a class its name. A step that was left out has none, just as a calculation that does not apply. */
export function symbolOf(walk: Walk, done: Done, symbol: string): readonly Hit[] {
  const found = done.steps.find(({ step }) => step.symbol === symbol);
  if (found === undefined) {
    walk.skipped = true;
    return [];
  }
  const kind = walk.world.kinds.get(done.subject.kind);
  const row = kind === undefined ? done.pointer : stablePath(kind, done.subject.value, done.pointer);
  noteValue(walk.trail, `${done.calculation.id} ${symbol} of ${addressOf(done.subject)} ${row}`, String(found.value));
  const value = found.step.options?.[found.value] ?? found.value;
  return [{ value, field: null, origin: { type: "calculation", of: done, symbol }, record: null, pointer: "" }];
}

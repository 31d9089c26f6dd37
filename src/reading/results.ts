import type { Done } from "../model/book.ts";
import { addressOf } from "../model/record.ts";
import { stablePath } from "../model/stable.ts";
import type { Hit, Walk } from "./hit.ts";
import { placesBehind, symbolsOf } from "../model/rests.ts";
import { noteResult } from "./notes.ts";
import { clear, noteAddress, noteValue } from "./trail.ts";
import { type Pending } from "./world.ts";
import { calculationKey } from "../model/calculation-key.ts";

/** A calculation on what a path has reached. What it waits for, whoever reads it waits for too. */
export function resultsOf(walk: Walk, hit: Hit, id: string): readonly Hit[] {
  if (hit.record === null) return [];
  const key = calculationKey(id, hit.record, hit.pointer);
  const done = walk.world.computed.get(key);
  noteResult(walk.world, key, done);
  if (done === undefined) {
    walk.skipped = true;
    return [];
  }
  const of = "pending" in done ? done.known : done;
  if (of === undefined) {
    if ("pending" in done) waitFor(walk, done);
    return [];
  }
  return [{ value: {}, field: null, origin: { type: "calculation", of, symbol: "" }, record: null, pointer: "" }];
}

function waitFor(walk: Walk, { findings, absences, notApplicable }: Pending): void {
  walk.trail.doubts.push(...findings);
  walk.trail.absences.push(...absences);
  walk.skipped ||= notApplicable;
}

/**
 * One result, with what it rests on; of a class its name. A step that was left out has none, just as a calculation that
 * does not apply. A step that waits waits for what stands in the way of its own inputs.
 */
export function symbolOf(walk: Walk, done: Done, symbol: string): readonly Hit[] {
  const { world, trail } = walk;
  const found = done.steps.find(({ step }) => step.symbol === symbol);
  if (found === undefined) {
    const pending = world.computed.get(calculationKey(done.calculation.id, done.subject, done.pointer));
    const open = pending !== undefined && "pending" in pending ? pending.open : new Map<string, never>();
    const behind = symbolsOf(done.calculation, symbol).flatMap((one) => open.get(one) ?? []);
    for (const { doubts, absences } of behind) {
      trail.doubts.push(...doubts);
      trail.absences.push(...absences);
    }
    if (behind.length === 0) walk.skipped = true;
    else if (pending !== undefined && "pending" in pending && clear(trail)) waitFor(walk, pending);
    return [];
  }
  trail.results.push(calculationKey(done.calculation.id, done.subject, done.pointer));
  for (const address of placesBehind(done, symbol)) noteAddress(world, trail, address, "");
  const kind = world.kinds.get(done.subject.kind);
  const row = kind === undefined ? done.pointer : stablePath(kind, done.subject.value, done.pointer);
  noteValue(trail, `${done.calculation.id} ${symbol} of ${addressOf(done.subject)} ${row}`, String(found.value));
  const value = found.step.options?.[found.value] ?? found.value;
  return [{ value, field: null, origin: { type: "calculation", of: done, symbol }, record: null, pointer: "" }];
}

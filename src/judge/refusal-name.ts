import { isObject, listAround, pointerStep, stepsOf } from "../model/json.ts";
import type { BookRecord } from "../model/record.ts";
import { fieldOfPointer, rowName } from "../model/stable.ts";
import { lowerTitle } from "../model/titles.ts";
import { startAt, type Hit } from "../reading/hit.ts";
import { unspoken } from "../plan/result-checks.ts";
import type { Case } from "../reading/subjects.ts";
import type { World } from "../reading/world.ts";

/** "RT-03, row 2: joint C2", "pressure test PT-01, visual examination": what was rejected, in words. */
export function nameOfRefused(world: World, { record, pointer }: Case, hit: Hit): string {
  const kind = world.kinds.get(record.kind);
  const title = lowerTitle(kind?.title ?? record.kind);
  const inside = insideOf(world, record, pointer, hit);
  if (pointer === "") return [`${title} ${record.id}`, ...inside].join(", ");
  const row = startAt(world, record, pointer);
  const list = kind === undefined ? undefined : fieldOfPointer(kind.fields, record.value, listAround(pointer));
  const value = isObject(row.value) ? row.value : {};
  const key = list?.rowKey;
  const field = key === undefined ? undefined : list?.item?.fields?.get(key);
  const named = key === undefined ? undefined : value[key];
  const number = typeof value["row"] === "string" ? value["row"] : String(Number(stepsOf(pointer).at(-1)) + 1);
  // A bare number says nothing without what it numbers.
  const about =
    typeof named !== "string"
      ? []
      : field?.type === "link" || /^[\d.-]+$/.test(named)
        ? [`${field?.title.toLowerCase() ?? ""} ${named}`]
        : [named];
  return `${record.id}, row ${number}: ${[...about, ...inside].join(", ") || "it"}`;
}

/** Objects and rows between the subject and the value: "visual examination", "indication 1", "seat tightness". */
function insideOf(world: World, record: BookRecord, pointer: string, hit: Hit): readonly string[] {
  const steps = stepsOf(hit.pointer.slice(pointer.length));
  const kind = world.kinds.get(record.kind);
  let at = pointer;
  return steps.flatMap((step, index) => {
    at += pointerStep(step);
    const here = startAt(world, record, at);
    const field = kind === undefined ? undefined : fieldOfPointer(kind.fields, record.value, at);
    const last = index === steps.length - 1;
    if (last && unspoken.has(step)) return [];
    if (/^\d+$/.test(step)) {
      const list = kind === undefined ? undefined : fieldOfPointer(kind.fields, record.value, listAround(at));
      const name = list === undefined ? undefined : rowName(list, here.value);
      return [name === undefined ? `row ${Number(step) + 1}` : `${list?.rowKey ?? ""} ${name}`.trim()];
    }
    return field === undefined || field.type === "list" ? [] : [field.title.toLowerCase()];
  });
}

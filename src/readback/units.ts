import { unitGroups } from "../model/unit-list.ts";
import { sameExponents, unitOf } from "../model/units.ts";
import { folded, type Sheet } from "./sheet.ts";

/** Units as they are searched, by their folded name. */
const units: ReadonlyMap<string, string> = new Map(
  unitGroups.flatMap((group) => Object.keys(group.units).map((name) => [folded(name).replaceAll(" ", ""), name])),
);

/** Whether a number on a sheet is followed by a unit of another sort: then it is another value with the same digits. */
export function otherUnit({ text, edges }: Sheet, end: number, unit: string | undefined): boolean {
  if (unit === undefined) return false;
  let stop = end + 1;
  while (stop < text.length && stop < end + 10 && edges[stop] !== 2) stop++;
  const found = units.get(text.slice(end, stop).replace(/[,.;:)]+$/, ""));
  const [here, there] = [unitOf(unit), found === undefined ? undefined : unitOf(found)];
  // Gauge and absolute pressure are one unit on many papers.
  return here !== undefined && there !== undefined && !sameExponents(here.dimension, there.dimension);
}

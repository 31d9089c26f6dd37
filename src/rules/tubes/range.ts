import { anyOf, list, optional, quantity, text, type Values } from "../../model/input.ts";
import { atLeast, atMost, type Measure } from "../../model/quantity.ts";
import { covers, span } from "../welding/thickness-range.ts";

/** How a weld between a tube and its tube plate is called, whether it is a fillet or goes into a groove. */
export const tubeEndWeld = "tube-to-tube-plate";

/** A range as a record states it: below `at`, with the sorts of weld in `welds`. What it does not state it does not cover. */
export const rangeAt = (at: string, welds: string) =>
  ({
    welds: anyOf(list(text(`${at}${welds}[]`))),
    processes: anyOf(list(text(`${at}processes[]`))),
    positions: anyOf(list(text(`${at}positions[]`))),
    wallFrom: optional(quantity(`${at}thickness.minimum`, "mm")),
    wallTo: optional(quantity(`${at}thickness.maximum`, "mm")),
    diameterFrom: optional(quantity(`${at}outsideDiameter.minimum`, "mm")),
    diameterTo: optional(quantity(`${at}outsideDiameter.maximum`, "mm")),
  }) as const;
type Range = Values<ReturnType<typeof rangeAt>>;

/** Ends of tubes as they were welded. */
export interface TubeEnd {
  readonly processes: readonly string[];
  readonly diameter: Measure;
  readonly wall: Measure;
  readonly position: string;
}

/** "51 mm × 6.3 mm, process 141, position PH". */
export const sizeOf = ({ processes, diameter, wall, position }: TubeEnd): string =>
  `${diameter.text} × ${wall.text}, process ${processes.join(", ")}, position ${position}`;

/** What a stated range does not cover of tube ends, each as the range it has; empty: all is covered. */
export const beyondRange = (range: Range, { processes, diameter, wall, position }: TubeEnd): readonly string[] =>
  lacking(
    range,
    { processes, positions: [position] },
    (limits) => inside(diameter, limits),
    (limits) => inside(wall, limits),
  );

/** What a range does not cover of a narrower one, each as the range it has; empty: all is covered. */
export const beyondTest = (tested: Range, procedure: Range): readonly string[] =>
  lacking(
    tested,
    procedure,
    (limits) => isStated(diametersOf(procedure)) && covers(limits, diametersOf(procedure)),
    (limits) => isStated(wallsOf(procedure)) && covers(limits, wallsOf(procedure)),
  );

interface Limits {
  readonly from: Measure | undefined;
  readonly to: Measure | undefined;
}
const wallsOf = ({ wallFrom, wallTo }: Range): Limits => ({ from: wallFrom, to: wallTo });
const diametersOf = ({ diameterFrom, diameterTo }: Range): Limits => ({ from: diameterFrom, to: diameterTo });
const isStated = ({ from, to }: Limits): boolean => from !== undefined || to !== undefined;

function lacking(
  range: Range,
  { processes, positions }: Pick<Range, "processes" | "positions">,
  diameter: (limits: Limits) => boolean,
  wall: (limits: Limits) => boolean,
): readonly string[] {
  if (!range.welds.includes(tubeEndWeld)) return [`${listed(range.welds)} welds`];
  const [diameters, walls] = [diametersOf(range), wallsOf(range)];
  const problems: string[] = [];
  if (!processes.every((one) => range.processes.includes(one))) problems.push(`process ${listed(range.processes)}`);
  if (!isStated(diameters) || !diameter(diameters)) problems.push(`diameter ${said(diameters)}`);
  if (!isStated(walls) || !wall(walls)) problems.push(`wall ${said(walls)}`);
  if (!positions.every((one) => range.positions.includes(one))) problems.push(`position ${listed(range.positions)}`);
  return problems;
}

const listed = (all: readonly string[]) => (all.length === 0 ? "not stated" : all.join(", "));
const said = (limits: Limits) => (isStated(limits) ? span(limits.from, limits.to) : "not stated");
const inside = (value: Measure, { from, to }: Limits): boolean =>
  (from === undefined || atLeast(value, from) === "yes") && (to === undefined || atMost(value, to) === "yes");

import { grouped } from "../model/grouped.ts";
import { isAt, type Box, type Spot } from "./spots.ts";
import { anchorsBy, columnOf, edgesOf, fewest, isProven, type Anchors, type Column } from "./template.ts";
import type { Group, Item } from "./template.ts";

/** Where the other rows say that an item stands: its place there, or what the page has instead. */
export interface Home {
  readonly own?: Spot;
  readonly box: Box;
}

/** Fields by which rows are looked for, and how many of them are tried. */
const mostAnchors = 2;
const mostTried = 3;

/** The homes of the items of rows that are printed alike, as far as the other rows prove them. */
export function homesIn<One extends Item>(group: Group<One>): ReadonlyMap<One, readonly Home[]> {
  const homes = new Map<One, Home[]>();
  if (group.size < fewest) return homes;
  const fields = [...new Set([...group.values()].flatMap((items) => [...items.keys()]))];
  const anchors = likeliest(fields, group)
    .map((field) => ({ field, anchors: anchorsBy(field, group) }))
    .filter(({ anchors }) => anchors.size >= fewest)
    .sort((a, b) => b.anchors.size - a.anchors.size)
    .slice(0, mostAnchors);
  for (const { field, anchors: rows } of anchors) homesFrom(field, rows, group, fields, homes);
  return homes;
}

/** The fields that stand in most rows once, each at a place of its own. */
function likeliest(fields: readonly string[], group: Group<Item>): readonly string[] {
  const alone = fields.map((field) => {
    const places = [...group.values()].flatMap((items) => {
      const { spots = [] } = items.get(field) ?? {};
      return spots.length === 1 ? spots : [];
    });
    return { field, rows: [...grouped(places, ({ at }) => at).values()].filter(({ length }) => length === 1).length };
  });
  return alone
    .sort((a, b) => b.rows - a.rows)
    .slice(0, mostTried)
    .map(({ field }) => field);
}

function homesFrom<One extends Item>(
  anchor: string,
  anchors: Anchors,
  group: Group<One>,
  fields: readonly string[],
  homes: Map<One, Home[]>,
): void {
  const edges = edgesOf(anchors);
  const columns = fields.flatMap((field) => {
    const column = field === anchor ? undefined : columnOf(field, group, anchors, edges);
    return column === undefined ? [] : [{ field, list: listOf(field), column }];
  });
  for (const [row, spot] of anchors) {
    const items = group.get(row);
    const proven = columns.flatMap(({ field, list, column }) => {
      const item = items?.get(field);
      if (item === undefined || !isProven(column, row)) return [];
      return [{ item, list, there: column.at.has(row), box: boxOf(spot, column) }];
    });
    const there = proven.filter((one) => one.there).length;
    const lists = grouped(proven, ({ list }) => list);
    for (const one of proven) {
      const others = proven.length - 1;
      // A row that its other values do not confirm is another row.
      if (there - (one.there ? 1 : 0) < (others * 2) / 3) continue;
      const own = lists
        .get(one.list)
        ?.flatMap(({ box }) => one.item.spots.filter((candidate) => isAt(candidate, box)))[0];
      const found = homes.get(one.item) ?? [];
      found.push({ box: one.box, ...(own !== undefined && { own }) });
      homes.set(one.item, found);
    }
  }
}

/** Values of one list stand in any order. */
const listOf = (field: string) => field.replace(/\/\d+(?=$| )/, "/*");

const boxOf = (anchor: Spot, { anchorEdge, dx, dy, width }: Column): Box => ({
  ...anchor,
  x: anchor[anchorEdge] + dx,
  end: anchor[anchorEdge] + dx + width,
  y: anchor.y + dy,
});

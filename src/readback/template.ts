import { grouped } from "../model/grouped.ts";
import type { Spot } from "./spots.ts";

/** Something of a row that is looked for, with all places where it stands. */
export interface Item {
  readonly spots: readonly Spot[];
}

/** Rows that are printed alike, each with its items by field. */
export type Group<One extends Item> = ReadonlyMap<string, ReadonlyMap<string, One>>;

/** Where a row is found: the place of the field that marks it. */
export type Anchors = ReadonlyMap<string, Spot>;

type Edge = "x" | "end";

/** Where a field stands from the anchor of its row, as most rows agree. */
export interface Column {
  readonly anchorEdge: Edge;
  /** From that edge of the anchor to the left edge of the field. */
  readonly dx: number;
  readonly dy: number;
  readonly width: number;
  /** Rows that have it there, with the place it has. */
  readonly at: ReadonlyMap<string, Spot>;
  /** Rows that have an anchor and the field at all. */
  readonly rows: number;
}

/** Fewer rows prove nothing about the others. */
export const fewest = 4;

/** Of the rows but the one in question, the share that must have a field in its column. */
const share = 0.8;

const edges: readonly Edge[] = ["x", "end"];
/** Points by which the places of one column or line may differ. */
const slack = 1;

/**
 * The rows that a field marks: those it stands in once, on the line or in the column on which most rows have it. Where most
 * have it nowhere in common, those in which it stands only once on the pages.
 */
export function anchorsBy(field: string, group: Group<Item>): Anchors {
  const spots = [...group].flatMap(([row, items]) => (items.get(field)?.spots ?? []).map((spot) => ({ row, spot })));
  const rows = new Set(spots.map(({ row }) => row)).size;
  if (rows < fewest) return new Map();
  const lines = [
    ...edges.flatMap((edge) => clusters(spots, ({ spot }) => spot[edge])),
    ...[...grouped(spots, ({ spot }) => spot.sheet).values()].flatMap((on) => clusters(on, ({ spot }) => spot.y)),
  ];
  const best = lines.map(markedBy).reduce((most, one) => (one.size > most.size ? one : most), new Map<string, Spot>());
  return best.size >= Math.max(fewest, 0.6 * rows) ? best : markedBy(spots);
}

interface Vote {
  readonly row: string;
  readonly spot: Spot;
}

/** Rows with one place among these, which no other row has. */
function markedBy(votes: readonly Vote[]): Anchors {
  const byRow = grouped(votes, ({ row }) => row);
  const sheets = grouped(votes, ({ spot }) => spot.sheet);
  const rowsAt = new Map([...sheets].map(([sheet, on]) => [sheet, grouped(on, ({ spot }) => spot.at)]));
  return new Map(
    [...byRow].flatMap(([row, own]) => {
      // Cr is a word by itself there, and a part of Cr+Mo.
      const [only, second] = own.length > 1 ? own.filter(({ spot }) => spot.whole) : own;
      if (only === undefined || second !== undefined) return [];
      return rowsAt.get(only.spot.sheet)?.get(only.spot.at)?.length === 1 ? [[row, only.spot] as const] : [];
    }),
  );
}

/** Where most rows have a field from their anchor; undefined where they do not agree. */
export function columnOf(
  field: string,
  group: Group<Item>,
  anchors: Anchors,
  from: readonly Edge[],
): Column | undefined {
  const [one, other] = from.map((edge) => columnFrom(field, group, anchors, edge));
  return other !== undefined && other.at.size > (one?.at.size ?? 0) ? other : one;
}

function columnFrom(field: string, group: Group<Item>, anchors: Anchors, anchorEdge: Edge): Column | undefined {
  let rows = 0;
  const votes: (Vote & { readonly dx: Readonly<Record<Edge, number>>; readonly dy: number })[] = [];
  for (const [row, anchor] of anchors) {
    const item = group.get(row)?.get(field);
    if (item === undefined) continue;
    rows++;
    for (const spot of item.spots)
      if (spot.sheet === anchor.sheet) {
        const from = anchor[anchorEdge];
        votes.push({ row, spot, dx: { x: spot.x - from, end: spot.end - from }, dy: spot.y - anchor.y });
      }
  }
  const least = Math.max(fewest, share * rows) - 1;
  if (rows < fewest || votes.length < least) return undefined;
  let best: Column | undefined;
  for (const line of clusters(votes, ({ dy }) => dy)) {
    if (line.length < least) continue;
    for (const edge of edges)
      for (const cluster of clusters(line, ({ dx }) => dx[edge])) {
        if (cluster.length < least) continue;
        const at = new Map(cluster.map(({ row, spot }) => [row, spot]));
        if (at.size < least || at.size <= (best?.at.size ?? 0)) continue;
        const widths = cluster.map(({ spot }) => spot.end - spot.x).sort((one, other) => one - other);
        const width = widths[widths.length >> 1] ?? 0;
        const from = mean(cluster.map(({ dx }) => dx[edge])) - (edge === "end" ? width : 0);
        best = { anchorEdge, dx: from, width, dy: mean(cluster.map(({ dy }) => dy)), at, rows };
      }
  }
  return best;
}

/** Whether the other rows prove for one row where a field stands. */
export function isProven({ at, rows }: Column, row: string): boolean {
  const others = at.size - (at.has(row) ? 1 : 0);
  return others >= fewest - 1 && others >= share * (rows - 1);
}

/** The edges at which anchors stand under each other: the one at which fewer places differ; both where they stand in one line. */
export function edgesOf(anchors: Anchors): readonly Edge[] {
  const places = (edge: Edge) => new Set([...anchors.values()].map((spot) => Math.round(spot[edge]))).size;
  const [left, right] = [places("x"), places("end")];
  return left === right ? edges : left < right ? ["x"] : ["end"];
}

/** Parts a list where its sorted numbers are further apart than the slack. */
function clusters<T>(list: readonly T[], by: (one: T) => number): T[][] {
  const sorted = [...list].sort((a, b) => by(a) - by(b));
  const found: T[][] = [];
  let last = -Infinity;
  for (const one of sorted) {
    const at = by(one);
    if (at - last > slack) found.push([one]);
    else found.at(-1)?.push(one);
    last = at;
  }
  return found;
}

const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;

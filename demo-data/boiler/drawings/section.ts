import { balloon, polyline, type Frame } from "../../paper/figures.ts";
import { axes, box, centreLine, circle, dashed, shade } from "../../paper/shapes.ts";
import { figure } from "../../sheets/original.ts";
import { manholeAlong, nozzles, type Nozzle } from "../facts/nozzles.ts";
import { backStays, heightOf, secondPass, steamStays, thirdPass, type Geometry } from "./geometry.ts";

type Point = readonly [number, number];

/** Height above the inside bottom of the shell, as the frame counts it from the inside top. */
export const heightIn =
  ({ shell }: Geometry) =>
  (height: number): number =>
    shell.inside - height;

/** Both walls of a lying cylinder, cut: from, to, height of its axis, outside diameter, wall. */
function cut(frame: Frame, g: Geometry, from: number, to: number, axis: number, outside: number, wall: number): void {
  const y = heightIn(g);
  for (const side of [-1, 1]) {
    const outer = y(axis + (side * outside) / 2);
    box(frame, [from, outer], [to, outer + side * wall], 0.5, shade);
  }
}

/** An upright plate, cut, between two heights. */
function plateAt(frame: Frame, g: Geometry, x: number, bottom: number, top: number): void {
  const y = heightIn(g);
  box(frame, [x, y(top)], [x + g.plate, y(bottom)], 0.6, shade);
}

function hoopOf(frame: Frame, g: Geometry): void {
  const y = heightIn(g);
  const { hoop, furnace } = g;
  const mid = (hoop.from + hoop.to) / 2;
  for (const side of [-1, 1]) {
    const edge = furnace.centre + (side * furnace.outside) / 2;
    const out = edge + side * hoop.depth;
    const line = (off: number): Point[] => [
      [hoop.from, y(edge - side * off)],
      [mid - 45 + off / 2, y(out - side * off)],
      [mid + 45 - off / 2, y(out - side * off)],
      [hoop.to, y(edge - side * off)],
    ];
    polyline(frame, line(0), 0.7);
    polyline(frame, line(hoop.wall), 0.7);
  }
}

function pressureParts(frame: Frame, g: Geometry): void {
  const { shell, furnace, chamber, access, plate, hoop } = g;
  const radius = shell.inside / 2;
  cut(frame, g, 0, shell.length, radius, shell.outside, shell.wall);
  plateAt(frame, g, -plate, 0, shell.inside);
  plateAt(frame, g, shell.length, 0, shell.inside);
  cut(frame, g, 0, hoop.from, furnace.centre, furnace.outside, furnace.wall);
  cut(frame, g, hoop.to, furnace.end, furnace.centre, furnace.outside, furnace.wall);
  hoopOf(frame, g);
  const half = chamber.outside / 2;
  plateAt(frame, g, chamber.from - plate, chamber.centre - half + chamber.wall, chamber.centre + half - chamber.wall);
  plateAt(frame, g, chamber.to, chamber.centre - half + chamber.wall, chamber.centre + half - chamber.wall);
  cut(frame, g, chamber.from, chamber.to, chamber.centre, chamber.outside, chamber.wall);
  cut(frame, g, chamber.to + plate, shell.length, chamber.centre, access.outside, access.wall);
}

/** Tubes and stays by their rows: of each row its axis. */
function tubesAndStays(frame: Frame, g: Geometry): void {
  const y = heightIn(g);
  const rows = (points: readonly Point[]) => [...new Set(points.map(([, height]) => Math.round(height)))];
  const within = (height: number) => Math.abs(height - g.chamber.centre) > g.chamber.outside / 2;
  for (const height of rows(secondPass(g))) {
    polyline(
      frame,
      [
        [-g.plate, y(height)],
        [g.chamber.from, y(height)],
      ],
      0.35,
    );
  }
  const above = g.furnace.centre + g.furnace.outside / 2 + 60;
  for (const height of rows(thirdPass(g)).filter((one, index) => one > above && index % 2 === 0)) {
    const end = within(height) ? g.shell.length + g.plate : g.chamber.from - g.plate;
    dashed(frame, [-g.plate, y(height)], [end, y(height)], 0.25);
  }
  for (const height of rows(steamStays))
    box(frame, [-g.plate, y(height + 22)], [g.shell.length + g.plate, y(height - 22)], 0.35);
  for (const height of rows(backStays(g)))
    box(frame, [g.chamber.to, y(height + 22)], [g.shell.length + g.plate, y(height - 22)], 0.35, shade);
}

/** A nozzle of the side view: a short pipe on the shell's line, or a circle at its side. */
function nozzleAt(frame: Frame, g: Geometry, nozzle: Nozzle, names: boolean): void {
  const { along } = nozzle;
  const at = heightOf(nozzle);
  const half = figure(nozzle.diameter) / 2;
  const out = figure(nozzle.projection);
  if (typeof at === "number") {
    const y = heightIn(g)(at);
    circle(frame, [along, y], Math.max(half, 24), 0.6, shade);
    if (names) balloon(frame, nozzle.mark, [along + 95, y + 150], [along + 15, y + 25]);
    return;
  }
  const way = at === "top" ? -1 : 1;
  const wall = at === "top" ? -g.shell.wall : g.shell.inside + g.shell.wall;
  const disc = half * 1.6 + 25;
  box(frame, [along - half, wall], [along + half, wall + way * out], 0.6);
  box(frame, [along - disc, wall + way * out], [along + disc, wall + way * (out + 22)], 0.6, shade);
  if (names) balloon(frame, nozzle.mark, [along, wall + way * (out + 175)], [along, wall + way * (out + 22)]);
}

function supports(frame: Frame, g: Geometry): void {
  const bottom = g.shell.inside + g.shell.wall;
  for (const x of [g.shell.length * 0.17, g.shell.length * 0.8]) {
    box(frame, [x - 110, bottom], [x + 110, bottom + 250], 0.6);
    box(frame, [x - 170, bottom + 250], [x + 170, bottom + 275], 0.6, shade);
  }
  for (const x of [g.shell.length * 0.14, g.shell.length * 0.56]) {
    box(frame, [x - 70, -g.shell.wall], [x + 70, -g.shell.wall - 110], 0.6);
    circle(frame, [x, -g.shell.wall - 65], 26, 0.6);
  }
}

/** The boiler cut along its axis, the furnace to the left; `names` puts the marks of nozzles beside them. */
export function section(frame: Frame, g: Geometry, names: boolean): void {
  pressureParts(frame, g);
  tubesAndStays(frame, g);
  polyline(
    frame,
    [
      [g.seam, -g.shell.wall],
      [g.seam, 0],
    ],
    1.4,
  );
  supports(frame, g);
  const half = figure(g.part("P44").outsideDiameter) / 2;
  box(frame, [manholeAlong - half, -g.shell.wall], [manholeAlong + half, -g.shell.wall - 60], 0.6, shade);
  box(frame, [manholeAlong - half - 20, -g.shell.wall - 60], [manholeAlong + half + 20, -g.shell.wall - 92], 0.6);
  if (names) balloon(frame, "M1", [manholeAlong, -280], [manholeAlong, -104]);
  for (const one of nozzles) nozzleAt(frame, g, one, names);
  const y = heightIn(g);
  centreLine(frame, [-160, y(g.furnace.centre)], [g.furnace.end + 60, y(g.furnace.centre)]);
  centreLine(frame, [-160, y(g.shell.inside / 2)], [g.shell.length + 160, y(g.shell.inside / 2)]);
}

/** A plate seen from the fire side, with its openings; x from its axis, heights as in the section. */
export function plateView(
  frame: Frame,
  g: Geometry,
  holes: { readonly second?: boolean; readonly third?: boolean; readonly furnace?: boolean; readonly access?: boolean },
): void {
  const y = heightIn(g);
  const { shell, furnace, chamber, access, tube } = g;
  const at = ([x, height]: Point): Point => [x, y(height)];
  circle(frame, [0, y(shell.inside / 2)], shell.inside / 2, 0.9);
  if (holes.furnace === true) circle(frame, [0, y(furnace.centre)], furnace.outside / 2, 0.8);
  if (holes.access === true) circle(frame, [0, y(chamber.centre)], access.outside / 2, 0.8);
  const put = (points: readonly Point[], stays: readonly boolean[]) =>
    points.forEach((point, index) => {
      circle(frame, at(point), tube / 2, stays[index] === true ? 1.1 : 0.4, stays[index] === true ? shade : undefined);
    });
  if (holes.second === true) put(secondPass(g), staysIn(g, "P03", 0));
  if (holes.third === true) put(thirdPass(g), staysIn(g, "P03", 1));
  for (const point of steamStays) circle(frame, at(point), 22, 0.9, shade);
  axes(frame, [0, y(shell.inside / 2)], shell.inside / 2);
}

/** Which tubes of a plate's field are stay tubes: pairs left and right, spread evenly. */
export function staysIn(g: Geometry, plate: string, index: number): readonly boolean[] {
  const points = index === 0 ? secondPass(g) : thirdPass(g);
  const count = (g.part(plate).tubeFields?.[index]?.stayTubes ?? 0) / 2;
  const pairs = points.filter(([x]) => x > 0);
  const chosen = pairs.filter(
    (_, at) => Math.floor(((at + 1) * count) / pairs.length) > Math.floor((at * count) / pairs.length),
  );
  return points.map(([x, height]) => chosen.some((one) => one[0] === Math.abs(x) && one[1] === height));
}

import type { Part } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import { figure } from "../../sheets/original.ts";
import type { Nozzle } from "../facts/nozzles.ts";

export type Point = readonly [x: number, y: number];

/** Sizes in mm as the parts state them; lengths run from the inside of the front plate, heights from the shell's bottom. */
export interface Geometry {
  readonly shell: { readonly inside: number; readonly outside: number; readonly wall: number; readonly length: number };
  readonly seam: number;
  readonly plate: number;
  readonly furnace: { readonly outside: number; readonly wall: number; readonly centre: number; readonly end: number };
  readonly hoop: { readonly from: number; readonly to: number; readonly depth: number; readonly wall: number };
  readonly chamber: {
    readonly outside: number;
    readonly wall: number;
    readonly centre: number;
    readonly from: number;
    readonly to: number;
  };
  readonly access: { readonly outside: number; readonly wall: number };
  readonly tube: number;
  readonly pitch: number;
  readonly part: (id: string) => Part;
}

/** The geometry of the boiler; throws when a part is missing that its drawings show. */
export function geometryOf(facts: Facts): Geometry {
  const part = (id: string): Part => {
    const found = facts.all("part").find((one) => one.id === id);
    if (found === undefined) throw new Error(`the drawings miss part ${id}`);
    return found;
  };
  const wall = (id: string) => figure(part(id).nominalThickness);
  const outside = (id: string) => figure(part(id).outsideDiameter);
  const long = (id: string) => figure(part(id).length);
  const [first, second, third] = [long("P05"), figure(part("P07").hoop?.width), long("P06")];
  const from = first + second + third + wall("P09");
  const centre = figure(facts.equipment.levels?.highestHeatedSurface) - outside("P08") / 2;
  return {
    shell: {
      inside: figure(part("P01").insideDiameter),
      outside: outside("P01"),
      wall: wall("P01"),
      length: long("P01") + long("P02"),
    },
    seam: long("P01"),
    plate: wall("P03"),
    furnace: {
      outside: outside("P05"),
      wall: wall("P05"),
      // Low in the chamber, so that the tubes of the second pass find room above it.
      centre: centre - outside("P08") / 2 + wall("P08") + 19 + outside("P05") / 2,
      end: first + second + third,
    },
    hoop: { from: first, to: first + second, depth: figure(part("P07").hoop?.depth), wall: wall("P07") },
    chamber: { outside: outside("P08"), wall: wall("P08"), centre, from, to: from + long("P08") },
    access: { outside: outside("P11"), wall: wall("P11") },
    tube: outside("P12"),
    pitch: figure(part("P03").tubeFields?.[0]?.pitch),
    part,
  };
}

/** Centres of a triangular field: the uppermost `count` that a rule allows, in pairs left and right, `shift` apart from the middle. */
function field(
  pitch: number,
  count: number,
  start: number,
  allowed: (point: Point) => boolean,
  shift = 0,
): readonly Point[] {
  const row = (pitch * Math.sqrt(3)) / 2;
  const points: Point[] = [];
  for (let up = 0; up < 40; up++)
    for (let right = 0; right < 30; right++)
      for (const side of [-1, 1]) {
        const x = shift + pitch * (right + (up % 2 === 0 ? 0.5 : 0));
        if (x > 0 || side === 1) points.push([side * x, start - up * row]);
      }
  const found = points.filter(allowed);
  if (found.length < count) throw new Error(`a field of ${count} tubes has room for ${found.length} only`);
  return found.slice(0, count);
}

const distance = ([x, y]: Point, height: number) => Math.hypot(x, y - height);
const tubesOf = (geometry: Geometry, plate: string, index: number) => {
  const one = geometry.part(plate).tubeFields?.[index];
  return (one?.tubes ?? 0) + (one?.stayTubes ?? 0);
};

/** The second pass: above the furnace, within the reversal chamber, as far from the furnace as the plates must breathe. */
export function secondPass(geometry: Geometry): readonly Point[] {
  const { chamber, furnace, pitch, tube } = geometry;
  const within = chamber.outside / 2 - chamber.wall - 45;
  return field(
    pitch,
    tubesOf(geometry, "P03", 0),
    chamber.centre + within - 8,
    (point) =>
      distance(point, chamber.centre) <= within &&
      distance(point, furnace.centre) >= furnace.outside / 2 + 95 + tube / 2,
  );
}

/** The third pass: left and right of the chamber, no higher than it. */
export function thirdPass(geometry: Geometry): readonly Point[] {
  const { shell, chamber, pitch, tube } = geometry;
  const radius = shell.inside / 2;
  return field(
    pitch,
    tubesOf(geometry, "P03", 1),
    chamber.centre + chamber.outside / 2 - tube / 2 - 4,
    (point) =>
      distance(point, radius) <= radius - 40.5 - tube / 2 &&
      distance(point, chamber.centre) >= chamber.outside / 2 + 38,
    44,
  );
}

/** Bar stays of the steam space: three rows of two, from the nest upwards. */
export const steamStays: readonly Point[] = [
  [-340, 1480],
  [340, 1480],
  [-110, 1560],
  [110, 1560],
  [-220, 1730],
  [220, 1730],
];

/** Bar stays of the back plate, round the access tube. */
export const backStays = ({ chamber }: Geometry): readonly Point[] =>
  Array.from({ length: 8 }, (_, index) => {
    const angle = (Math.PI * (2 * index + 1)) / 8;
    return [420 * Math.cos(angle), chamber.centre + 420 * Math.sin(angle)] as const;
  });

/** How high above the shell's bottom a nozzle at its side stands; "top" and "bottom" on the shell's line. */
export const heightOf = ({ at }: Nozzle): "top" | "bottom" | number => (typeof at === "string" ? at : at[0]);

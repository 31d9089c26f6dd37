/** Sizes of the vessel in mm, along its axis from the left tangent line. */
export const outside = 355.6;
export const inside = 339.6;
const flange = 28;
const course = 245;
export const c1 = flange;
export const c2 = flange + course;
export const tangent = c2 + flange;
/** Where all nozzles sit. */
export const middle = (c1 + c2) / 2;
/** Circumference at the middle of the wall. */
export const around = 1092;

/** Inside radii of the ends. */
const crown = 284.5;
const knuckle = 54.8;

type Point = readonly [number, number];

/** Half of a dished end as points, on the outside (`wall` 8) or the inside (0), bulging left (-1) or right (+1) of a tangent line. */
export function endLine(from: number, side: -1 | 1, wall: number): readonly Point[] {
  const radius = inside / 2;
  const centre = crown - Math.sqrt((crown - knuckle) ** 2 - (radius - knuckle) ** 2);
  const meet = Math.asin((radius - knuckle) / (crown - knuckle));
  const steps = 24;
  const share = (index: number) => index / steps;
  // From the axis along the crown to where it meets the knuckle, and along that to the straight flange.
  const half: readonly Point[] = [
    ...Array.from({ length: steps + 1 }, (_, index): Point => {
      const angle = meet * share(index);
      return [(crown + wall) * Math.cos(angle) - crown + centre, (crown + wall) * Math.sin(angle)];
    }),
    ...Array.from({ length: steps + 1 }, (_, index): Point => {
      const angle = meet + (Math.PI / 2 - meet) * share(index);
      return [(knuckle + wall) * Math.cos(angle), radius - knuckle + (knuckle + wall) * Math.sin(angle)];
    }),
  ];
  const axis = outside / 2;
  const below = half.map(([x, y]): Point => [from + side * x, axis + y]);
  const above = half.map(([x, y]): Point => [from + side * x, axis - y]).reverse();
  return [...above, ...below];
}

/** How far an end stands out of its tangent line, to the outside. */
export const dish = Math.max(...endLine(0, 1, 8).map(([x]) => x));

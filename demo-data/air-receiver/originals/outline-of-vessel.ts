/** Sizes of the vessel in mm. */
const course = 1125;
const flange = 40;
export const dish = 308;
/** Middle of each joint along the axis, from the left tangent line. */
export const c1 = flange;
export const c2 = flange + course;
export const c3 = flange + 2 * course;
export const tangent = c3 + flange;

/** Half of a dished end as points: bulging to the left (-1) or the right (+1) of a tangent line. */
export function endLine(from: number, side: -1 | 1): (readonly [number, number])[] {
  const count = 40;
  return Array.from({ length: count + 1 }, (_, index) => {
    const angle = (Math.PI * index) / count - Math.PI / 2;
    const bulge = Math.abs(Math.cos(angle)) ** 0.72;
    return [from + side * dish * bulge, 600 + 600 * Math.sin(angle)] as const;
  });
}

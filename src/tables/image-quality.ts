import { fromMemory } from "../model/basis.ts";
import type { Table } from "../model/table.ts";

/** A thickness in mm and the number of the wire asked for above it, up to the next. */
type Lines = readonly (readonly [over: number, wire: number])[];

/** `how` completes the title: "through two walls, …". */
function wires(id: string, how: string, thickness: string, classes: Readonly<Record<"A" | "B", Lines>>): Table {
  return {
    id,
    title: `Wire that a radiograph must show ${how}`,
    standard: "EN ISO 17636-1",
    keys: [{ name: "class", match: "equal" }],
    columns: {
      points: {
        means: `${thickness} above which, up to that of the next line, this wire or a thinner one must be seen`,
        points: ["over", "wire"],
      },
    },
    rows: Object.entries(classes).map(([name, lines]) => ({
      keys: { class: name },
      values: { points: lines.map(([over, wire]) => ({ over: `${over} mm`, wire: `W${wire}` })) },
      basis: fromMemory("EN ISO 17636-1", undefined, `annex B, wires ${how}, class ${name}; ISO 19232-3 has the same`),
    })),
  };
}

// prettier-ignore
export const wiresSingleWall = wires(
  "image-quality-single-wall", "through a single wall, indicator on the source side", "nominal thickness",
  {
    A: [[0, 18], [1.2, 17], [2, 16], [3.5, 15], [5, 14], [7, 13], [10, 12], [15, 11], [25, 10], [32, 9], [40, 8], [55, 7], [85, 6], [150, 5], [250, 4]],
    B: [[0, 19], [1.5, 18], [2.5, 17], [4, 16], [6, 15], [8, 14], [12, 13], [20, 12], [30, 11], [35, 10], [45, 9], [65, 8], [120, 7], [200, 6], [350, 5]],
  },
);

// prettier-ignore
export const wiresDoubleWallFilm = wires(
  "image-quality-double-wall-film", "through two walls, single or double image, indicator on the film side", "penetrated thickness",
  {
    A: [[0, 18], [1.2, 17], [2, 16], [3.5, 15], [5, 14], [10, 13], [15, 12], [22, 11], [38, 10], [48, 9], [60, 8], [85, 7], [125, 6], [225, 5], [375, 4]],
    B: [[0, 19], [1.5, 18], [2.5, 17], [4, 16], [6, 15], [12, 14], [18, 13], [30, 12], [45, 11], [55, 10], [70, 9], [100, 8], [180, 7], [300, 6]],
  },
);

// prettier-ignore
export const wiresDoubleWallSource = wires(
  "image-quality-double-wall-source", "through two walls, double image, indicator on the source side", "penetrated thickness",
  {
    A: [[0, 18], [1.2, 17], [2, 16], [3.5, 15], [5, 14], [7, 13], [12, 12], [18, 11], [30, 10], [40, 9], [50, 8], [60, 7], [85, 6], [120, 5], [220, 4], [380, 3]],
    B: [[0, 19], [1.5, 18], [2.5, 17], [4, 16], [6, 15], [8, 14], [15, 13], [25, 12], [38, 11], [45, 10], [55, 9], [70, 8], [100, 7], [170, 6], [250, 5]],
  },
);

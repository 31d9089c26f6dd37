import { fromMemory } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { numbers } from "./arguments.ts";
import { short } from "../../model/print-number.ts";

/**
 * Named function `countedWall(branchWall, shellWall, bore, axialWidth, smallBore, small, large, frame)` in mm: how much of
 * the wall of a branch counts as reinforcement. `axialWidth` above 0 says that it is the frame of an access opening.
 */
export const countedWall: ListFunction = {
  name: "countedWall",
  means: "wall of the branch that counts as reinforcement, limited as a multiple of the wall of the shell",
  basis: fromMemory("EN 12953-3", undefined, "ratio of the walls of branch and shell"),
  parameters: [
    ...["branchWall", "shellWall", "bore", "axialWidth", "smallBore"].map((name) => ({ name, unit: "mm" })),
    ...["small", "large", "frame"].map((name) => ({ name, unit: "1" })),
  ],
  unit: "mm",
  compute: numbers((values) => {
    const [branch = Number.NaN, shell = Number.NaN, bore = Number.NaN, axial = Number.NaN] = values;
    const [smallBore = Number.NaN, small = Number.NaN, large = Number.NaN, frame = Number.NaN] = values.slice(4);
    if (!(branch > 0 && shell > 0 && bore > 0))
      return { refused: "branch and shell must have a wall left after allowances, and the branch a bore" };
    const [ratio, sort] =
      axial > 0
        ? ([frame, "frame of an access opening"] as const)
        : bore <= smallBore * (1 + 1e-9)
          ? ([small, `bore of at most ${short(smallBore)} mm`] as const)
          : ([large, `bore above ${short(smallBore)} mm`] as const);
    const value = Math.min(branch, ratio * shell);
    const said = `${sort}: at most ${short(ratio)} times ${short(shell)} mm counts`;
    return { value, lines: [value < branch ? `${said}, of ${short(branch)} mm` : said] };
  }),
};

import { excerptSeen } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { numbers } from "./arguments.ts";

/** What a breathing space lies between, as records state it; the value of the input is the position in this list. */
export const breathingSorts: readonly string[] = [
  "furnace-shell",
  "furnace-tubes",
  "tubes-shell",
  "gusset-tubes",
  "gusset-furnace",
  "other",
];

const short = (value: number) => String(Number(value.toPrecision(5)));

/**
 * Named function `leastBreathing(sort, D, share, shareOther, least, most, tubesShell, gussetTubes, gussetFurnace)` in mm:
 * the least breathing space of a sort in a shell of inside diameter D.
 */
export const leastBreathing: ListFunction = {
  name: "leastBreathing",
  means: "least breathing space for what it lies between",
  basis: excerptSeen("Indian Boiler Regulations 1950", "regulation 590"),
  parameters: [
    { name: "sort", unit: "1" },
    { name: "D", unit: "mm" },
    { name: "share", unit: "1" },
    { name: "shareOther", unit: "1" },
    ...["least", "most", "tubesShell", "gussetTubes", "gussetFurnace"].map((name) => ({ name, unit: "mm" })),
  ],
  unit: "mm",
  compute: numbers((values) => {
    const [position = Number.NaN, D = Number.NaN, share = Number.NaN, shareOther = Number.NaN] = values;
    const [least = Number.NaN, most = Number.NaN, ...fixed] = values.slice(4);
    const sort = breathingSorts[position];
    if (sort === undefined) return { refused: "what the space lies between is not known" };
    if (!(D > 0)) return { refused: "the shell must have a diameter" };
    const byDiameter = (part: number) => ({
      value: Math.min(Math.max(part * D, least), most),
      lines: [`${sort}: ${short(part * 100)} % of ${short(D)} mm, from ${short(least)} mm to ${short(most)} mm`],
    });
    if (sort === "furnace-shell" || sort === "furnace-tubes") return byDiameter(share);
    if (sort === "other") return byDiameter(shareOther);
    const value = fixed[["tubes-shell", "gusset-tubes", "gusset-furnace"].indexOf(sort)] ?? Number.NaN;
    return { value, lines: [`${sort}: ${short(value)} mm for any shell`] };
  }),
};

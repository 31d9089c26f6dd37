import { anyOf, list, optional, quantity, text, thing, things, type Values } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";

const material = {
  grade: text("material.grade"),
  group: text("table(grade-group, material.standard, material.edition, material.grade).group"),
} as const;

/** What lay in the furnace, with the thickness that decides. */
export const load = {
  parts: anyOf(things("parts[]", { ...material, thickness: quantity("nominalThickness", "mm") })),
  joints: anyOf(
    things("joints[]", { thicknesses: list(quantity("thicknesses[]", "mm")), parts: list(thing("parts[]", material)) }),
  ),
} as const;

/** Limits the procedure itself states. */
export const own = optional(
  thing("procedure", {
    lowest: optional(quantity("heatTreatment.lowest", "°C")),
    highest: optional(quantity("heatTreatment.highest", "°C")),
    time: optional(quantity("heatTreatment.holdingTime", "min")),
    loading: optional(quantity("heatTreatment.loadingTemperature", "°C")),
    heating: optional(quantity("heatTreatment.heatingRate", "K/h")),
    cooling: optional(quantity("heatTreatment.coolingRate", "K/h")),
  }),
);

/** The load as rules get it. */
export type Load = Values<typeof load>;

/** The thickest of what was treated; a joint counts as the thinner of what meets there, the weld being no thicker. */
export function thickestOf({ parts, joints }: Load): Measure | undefined {
  const all = [
    ...parts.map(({ thickness }) => thickness),
    ...joints.flatMap(({ thicknesses }) => thicknesses.toSorted((a, b) => a.value - b.value).slice(0, 1)),
  ];
  return all.toSorted((a, b) => b.value - a.value)[0];
}

/** Each steel once, by group and grade. */
export function steelsOf({ parts, joints }: Load): readonly { readonly group: string; readonly grade: string }[] {
  const all = [...parts, ...joints.flatMap((joint) => joint.parts)];
  return [...new Map(all.map(({ group, grade }) => [`${group} ${grade}`, { group, grade }])).values()];
}

/** A figure and who states it. */
export interface Limit {
  readonly value: Measure;
  readonly by: string;
}

/** The stricter of two limits, where there are two. */
export function strictest(limits: readonly (Limit | undefined)[], side: "least" | "most"): Limit | undefined {
  const known = limits.filter((one) => one !== undefined);
  const sorted = known.toSorted((a, b) =>
    side === "least" ? b.value.value - a.value.value : a.value.value - b.value.value,
  );
  return sorted[0];
}

/** A limit with who states it; none where there is none. */
export const limit = (value: Measure | undefined, by: string): Limit | undefined => value && { value, by };

/** What is to be done where a charge lies out of its limits. */
export const reread =
  "compare with the chart; if it is true, raise a nonconformity report and have it decided, or have it treated again";

import { list, quantity, table, text, type LookUp } from "../../model/input.ts";
import { atMost, type Measure } from "../../model/quantity.ts";

/** What the offset of the edges of a butt joint is judged by. */
export const offsetInputs = {
  limits: table("weld-misalignment"),
  vessel: table("vessel-offset"),
  family: text("profile.designStandards"),
};

export const offsetJoint = {
  type: text("type"),
  role: text("role"),
  level: text("qualityLevel"),
  thicknesses: list(quantity("thicknesses[]", "mm")),
};

interface Joint {
  readonly role: string;
  readonly level: string;
  readonly thicknesses: readonly Measure[];
}

interface Given {
  readonly limits: LookUp;
  readonly vessel: LookUp;
  readonly family: string;
}

/** What permits less than an offset, as "quality level C permits 1.2 mm at 8.0 mm"; undefined where nothing does. The stricter of two speaks. */
export function offsetRefused(offset: Measure, { role, level, thicknesses }: Joint, given: Given): string | undefined {
  const [thinnest] = [...thicknesses].sort((a, b) => a.low - b.low);
  if (thinnest === undefined) return undefined;
  const weld = role === "circumferential" ? "circumferential" : "plate";
  const most = [
    [given.vessel(given.family, role, thinnest).quantity("most"), "EN 13445-4"],
    [given.limits(weld, level, thinnest).quantity("most"), `quality level ${level}`],
  ] as const;
  const [strictest] = most
    .flatMap(([limit, said]) => (limit === undefined ? [] : [{ limit, said }]))
    .sort((a, b) => a.limit.value - b.limit.value);
  if (strictest === undefined || atMost(offset, strictest.limit) === "yes") return undefined;
  return `${strictest.said} permits ${strictest.limit.text} at ${thinnest.text}`;
}

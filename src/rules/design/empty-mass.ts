import { commonPractice } from "../../model/basis.ts";
import { anyOf, count, optional, quantity, text, things, type Thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { steelDensity } from "../shared/steel.ts";

/** The whole weighs no less than this share of its parts, and no more than so many times their mass. */
const least = 0.95;
const most = 2.5;

const size = (path: string) => optional(quantity(path, "mm"));
const part = {
  role: text("role"),
  number: count("quantity"),
  thickness: size("nominalThickness"),
  diameter: size("outsideDiameter"),
  length: size("length"),
};

/** Mass in kg of the parts whose sizes are known: ends as plain discs, all others as cylinders with a wall. */
function massOf({ role, number, thickness, diameter, length }: Thing<typeof part>): number {
  if (thickness === undefined || diameter === undefined || length === undefined) return 0;
  const [t, d] = [Math.min(thickness.value, diameter.value / 2), diameter.value];
  const volume = role === "end" ? (Math.PI / 4) * d ** 2 * t : Math.PI * (d - t) * t * length.value;
  return steelDensity * number * volume;
}

export const emptyMass = rule({
  id: "empty-mass",
  title: "Equipment weighs empty what its parts weigh, and not far more",
  basis: commonPractice(
    "walls make the most of a vessel's mass: 7.85 kg/dm³, ends as plain discs; flanges, supports and fittings add less than as much and a half again",
  ),
  kind: "equipment",
  when: [
    { path: "emptyMass", exists: true },
    { path: "book.part.outsideDiameter", exists: true },
    { path: "book.part.length", exists: true },
  ],
  severity: "query",
  owner: "design",
  inputs: { mass: optional(quantity("emptyMass", "kg")), parts: anyOf(things("book.part", part)) },
  *check({ mass, parts }, equipment) {
    const computed = parts.reduce((sum, one) => sum + massOf(one), 0);
    if (mass === undefined || computed === 0) return;
    const light = mass.high + mass.halfUnit < least * computed;
    if (!light && mass.low - mass.halfUnit <= most * computed) return;
    yield {
      at: "mass",
      accuses: [],
      message: `equipment ${equipment.name} weighs ${mass.text} empty; its parts of known sizes weigh ${Number(computed.toPrecision(3))} kg`,
      why: light ? "the whole is no lighter than its parts" : `more than ${most} times its parts`,
      hint: "compare with the drawing and the nameplate, and the sizes of the parts with their drawings; one of them is not right",
    };
  },
  examples: [
    { name: "with its fittings", given: weighed("400 kg"), objections: [] },
    {
      name: "ten times",
      given: weighed("3500 kg"),
      objections: ["equipment X-01 weighs 3500 kg empty; its parts of known sizes weigh 306 kg"],
    },
    {
      name: "a tenth",
      given: weighed("35 kg"),
      objections: ["equipment X-01 weighs 35 kg empty; its parts of known sizes weigh 306 kg"],
    },
  ],
});

/** A course of 1200 mm, 8 mm, 1000 mm long, with one end. */
function weighed(mass: string) {
  const sizes = { number: 1, thickness: "8 mm", diameter: "1200 mm" };
  return {
    mass,
    parts: [
      { role: "shell-course", ...sizes, length: "1000 mm" },
      { role: "end", ...sizes, length: "300 mm" },
    ],
  };
}

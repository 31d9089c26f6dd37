import { commonPractice } from "../../model/basis.ts";
import { anyOf, count, optional, quantity, text, things, type Thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const share = [0.6, 1.3] as const;

const size = (path: string) => optional(quantity(path, "mm"));
const part = {
  heating: optional(text("heating")),
  number: count("quantity"),
  diameter: size("outsideDiameter"),
  length: size("length"),
};

/** Outside surface in m² of the cylinders whose sizes are known. */
const surfaceOf = ({ number, diameter, length }: Thing<typeof part>): number =>
  diameter === undefined || length === undefined ? 0 : number * Math.PI * diameter.value * length.value * 1e-6;

export const heatingSurfaceOfParts = rule({
  id: "heating-surface-of-parts",
  title: "The heating surface is that of the parts which are heated",
  basis: commonPractice(
    "the surface of heated tubes and furnaces, reckoned outside; counted on the gas side it is a tenth or two less, with plates a little more",
  ),
  kind: "equipment",
  scope: "shell-boilers",
  when: [
    { path: "heatingSurface", exists: true },
    { path: "book.part.heating", exists: true },
    { path: "book.part.outsideDiameter", exists: true },
    { path: "book.part.length", exists: true },
  ],
  severity: "query",
  owner: "design",
  inputs: {
    stated: optional(quantity("heatingSurface", "m²")),
    parts: anyOf(things("book.part", part)),
  },
  *check({ stated, parts }, equipment) {
    const heated = parts.filter(({ heating }) => heating !== undefined && heating !== "none");
    const computed = heated.reduce((sum, one) => sum + surfaceOf(one), 0);
    if (stated === undefined || computed === 0) return;
    if (stated.value >= share[0] * computed && stated.value <= share[1] * computed) return;
    yield {
      at: "stated",
      accuses: [],
      message: `equipment ${equipment.name} states a heating surface of ${stated.text}; its heated parts of known sizes have ${Number(computed.toPrecision(3))} m² outside`,
      why: `${heated.length} heated parts`,
      hint: "compare with the design data, and which parts are recorded as heated, their number, diameter and length",
    };
  },
  examples: [
    { name: "on the gas side", given: tubes("27 m²"), objections: [] },
    {
      name: "ten times",
      given: tubes("320 m²"),
      objections: [
        "equipment X-01 states a heating surface of 320 m²; its heated parts of known sizes have 31.4 m² outside",
      ],
    },
  ],
});

/** A hundred tubes of 50 mm, 2 m long. */
function tubes(stated: string) {
  return {
    stated,
    parts: [
      { heating: "convection", number: 100, diameter: "50 mm", length: "2000 mm" },
      { heating: "none", number: 1, diameter: "1900 mm", length: "4000 mm" },
    ],
  };
}

import { commonPractice } from "../../model/basis.ts";
import { count, quantity, type Inputs, type Values } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { steelDensity } from "../shared/steel.ts";

const millimetres = (path: string) => quantity(path, "mm");

interface Shape<I extends Inputs> {
  readonly id: string;
  readonly forms: readonly string[];
  readonly title: string;
  readonly basis: string;
  /** Sizes beside the thickness that the row must state. */
  readonly sizes: I;
  /** Size that makes it another shape. */
  readonly without?: string;
  /** As what the mass is computed, beside the piece itself. */
  readonly as?: string;
  /** Volume of one piece in mm³. */
  readonly volume: (thickness: number, sizes: Values<I>) => number;
  readonly words: (thickness: Measure, sizes: Values<I>) => string;
  /** What the stated mass may be of the computed one, weighed or theoretical. */
  readonly share: readonly [least: number, most: number];
  /** Sizes of examples, and the computed mass of two pieces 8 mm thick. */
  readonly example: { readonly given: Readonly<Record<keyof I, string>>; readonly mass: number };
}

const shape = <const I extends Inputs>(one: Shape<I>) => one as unknown as Shape<Inputs>;

const shapes: readonly Shape<Inputs>[] = [
  shape({
    id: "plate-mass",
    forms: ["plate"],
    title: "The mass of a row of plates is that of its sizes",
    basis: "steel weighs 7.85 kg/dm³; rolled plates differ by less than a seventh from that",
    sizes: { width: millimetres("width"), length: millimetres("length") },
    volume: (thickness, { width, length }) => thickness * width.value * length.value,
    words: (thickness, { width, length }) => `${width.text} by ${length.text} by ${thickness.text}`,
    share: [0.88, 1.15],
    example: { given: { width: "1250 mm", length: "4000 mm" }, mass: 628 },
  }),
  shape({
    id: "tube-mass",
    forms: ["tube", "pipe"],
    title: "The mass of a row of tubes is that of its sizes",
    basis: "steel weighs 7.85 kg/dm³; walls of tubes are made within an eighth, and tubes near to the length ordered",
    sizes: { diameter: millimetres("diameter"), length: millimetres("length") },
    volume: (thickness, { diameter, length }) => Math.PI * (diameter.value - thickness) * thickness * length.value,
    words: (thickness, { diameter, length }) => `${diameter.text} by ${thickness.text}, ${length.text} long`,
    share: [0.85, 1.18],
    example: { given: { diameter: "108 mm", length: "2000 mm" }, mass: 78.9168 },
  }),
  shape({
    id: "bar-mass",
    forms: ["bar"],
    title: "The mass of a row of round bars is that of its sizes",
    basis: "steel weighs 7.85 kg/dm³; bars are rolled within a few percent of their section",
    sizes: { diameter: millimetres("diameter"), length: millimetres("length") },
    volume: (_, { diameter, length }) => (Math.PI / 4) * diameter.value ** 2 * length.value,
    words: (_, { diameter, length }) => `${diameter.text}, ${length.text} long`,
    share: [0.9, 1.12],
    example: { given: { diameter: "45 mm", length: "4100 mm" }, mass: 102.376 },
  }),
  shape({
    id: "end-mass",
    forms: ["formed-end"],
    title: "The mass of a row of formed ends can be that of its sizes",
    basis: "steel weighs 7.85 kg/dm³; an end has more metal than a disc of its diameter, and less than three of them",
    sizes: { diameter: millimetres("diameter") },
    volume: (thickness, { diameter }) => (Math.PI / 4) * diameter.value ** 2 * thickness,
    words: (thickness, { diameter }) => `discs of ${diameter.text} by ${thickness.text}`,
    as: "as plain discs ",
    share: [1, 3],
    example: { given: { diameter: "1200 mm" }, mass: 142.0503 },
  }),
  shape({
    id: "forging-mass",
    forms: ["forging"],
    title: "The mass of a row of forged flanges can be that of its sizes",
    basis:
      "steel weighs 7.85 kg/dm³; a flange has more metal than a third of a disc of its diameter, and with its neck less than three of them",
    sizes: { diameter: millimetres("diameter") },
    without: "length",
    volume: (thickness, { diameter }) => (Math.PI / 4) * diameter.value ** 2 * thickness,
    words: (thickness, { diameter }) => `discs of ${diameter.text} by ${thickness.text}`,
    as: "as plain discs ",
    share: [0.33, 3],
    example: { given: { diameter: "460 mm" }, mass: 20.8734 },
  }),
];

const kilograms = (mass: number) => `${Number(mass.toPrecision(4))} kg`;

/** Thickness, width, length, diameter, number and mass of a row are one sum: a slip in any of them shows. */
export const rowMass: readonly Rule[] = shapes.map(
  ({ id, forms, title, basis, sizes, volume, words, share: [least, most], example, without, as = "" }) =>
    rule({
      id,
      title,
      basis: commonPractice(basis),
      kind: "material-certificate#rows",
      when: [
        { path: "form", equals: forms },
        ...["mass", "pieces", ...Object.keys(sizes)].map((path) => ({ path, exists: true })),
        ...(without === undefined ? [] : [{ path: without, exists: false }]),
      ],
      severity: "query",
      owner: "purchasing",
      inputs: { mass: quantity("mass", "kg"), pieces: count("pieces"), thickness: millimetres("thickness"), ...sizes },
      *check({ mass, pieces, thickness, ...stated }, row) {
        const computed = steelDensity * pieces * volume(thickness.value, stated);
        if (mass.high + mass.halfUnit >= computed * least && mass.low - mass.halfUnit <= computed * most) return;
        yield {
          at: "mass",
          message: `${row.name} weighs ${mass.text} as certified; ${pieces === 1 ? "one piece" : `${pieces} pieces`} of its sizes ${as}would weigh ${kilograms(computed)}`,
          why: `${pieces} of ${words(thickness, stated)}`,
          hint: "compare thickness, sizes, number and mass with the certificate and the delivery note: one of them is not what was delivered",
        };
      },
      examples: [
        {
          name: "as computed",
          given: { mass: kilograms(example.mass * least * 1.01), pieces: 2, thickness: "8 mm", ...example.given },
          objections: [],
        },
        {
          name: "a little more",
          given: { mass: kilograms(example.mass * most * 0.99), pieces: 2, thickness: "8 mm", ...example.given },
          objections: [],
        },
        {
          name: "far more",
          given: { mass: "9000 kg", pieces: 2, thickness: "8 mm", ...example.given },
          objections: [
            `X-01 weighs 9000 kg as certified; 2 pieces of its sizes ${as}would weigh ${kilograms(example.mass)}`,
          ],
        },
        {
          name: "far less",
          given: { mass: "5 kg", pieces: 2, thickness: "8 mm", ...example.given },
          objections: [
            `X-01 weighs 5 kg as certified; 2 pieces of its sizes ${as}would weigh ${kilograms(example.mass)}`,
          ],
        },
      ],
    }),
);

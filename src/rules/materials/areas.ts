import { derivedFrom } from "../../model/basis.ts";
import { exists, list, optional, quantity, thing } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { rule, type Rule } from "../../model/rule.ts";

interface Developed {
  readonly id: string;
  readonly title: string;
  readonly basis: string;
  readonly roles: readonly string[];
  readonly long: boolean;
  /** mm². */
  readonly area: (diameter: Measure, thickness: Measure, length: number) => number;
  /** Area of the example, 1200 mm by 8 mm, 1125 mm long. */
  readonly example: string;
}

const shapes: readonly Developed[] = [
  {
    id: "course-area",
    title: "The plate cut for a course is its developed shell",
    basis: "a course is rolled from a plate as long as its girth at mid-wall and as wide as the course",
    roles: ["shell-course", "furnace", "reversal-chamber"],
    long: true,
    area: (diameter, thickness, length) => Math.PI * (diameter.value - thickness.value) * length,
    example: "4.21 m²",
  },
  {
    id: "disc-area",
    title: "The plate cut for a tube plate or round plate is its disc",
    basis: "a round plate is cut as a disc of its diameter",
    roles: ["tube-plate", "flat-plate"],
    long: false,
    area: (diameter) => (Math.PI / 4) * diameter.value ** 2,
    example: "1.13 m²",
  },
];

/** What a cylinder or disc takes of a plate follows from its drawing: a slip in diameter, length or area shows. */
export const developedAreas: readonly Rule[] = shapes.map(({ id, title, basis, roles, long, area, example }) =>
  rule({
    id,
    title,
    basis: derivedFrom(basis),
    kind: "part",
    when: [
      { path: "role", equals: roles },
      { path: "material.form", equals: "plate" },
      { path: "outsideDiameter", exists: true },
      ...(long ? [{ path: "length", exists: true }] : []),
      { path: "<piece-mark:part>.area", exists: true },
    ],
    severity: "query",
    owner: "shop",
    inputs: {
      diameter: quantity("outsideDiameter", "mm"),
      thickness: quantity("nominalThickness", "mm"),
      length: optional(quantity("length", "mm")),
      marks: list(thing("<piece-mark:part>", { area: quantity("area", "m²"), cutUp: exists("<piece-mark:parent>") })),
    },
    *check({ diameter, thickness, length, marks }, part) {
      const whole = marks.filter(({ cutUp }) => !cutUp);
      const cut = whole.reduce((sum, one) => sum + one.area.value, 0);
      const rounding = whole.reduce((sum, one) => sum + one.area.halfUnit, 0);
      const developed = area(diameter, thickness, length?.value ?? 0) / 1e6;
      // Ends of a course are machined, and holes are cut later: a plate is cut whole, with a little more.
      if (cut + rounding >= developed * 0.98 && cut - rounding <= developed * 1.4) return;
      yield {
        at: "diameter",
        accuses: [],
        message: `${cut.toFixed(2)} m² of plate are cut for part ${part.name}; its drawing makes ${developed.toFixed(2)} m²`,
        why: `outside diameter ${diameter.text}, ${thickness.text} thick${length === undefined ? "" : `, ${length.text} long`}; ${whole.map((one) => `${one.$.name} ${one.area.text}`).join(", ")}`,
        hint: "compare diameter, length and area with the drawing and the cutting plan; correct the one that is wrong",
        related: whole.map((one) => ({ at: [one, "area"] as const, message: `${one.area.text} here` })),
      };
    },
    examples: [
      {
        name: "as developed",
        given: { diameter: "1200 mm", thickness: "8 mm", length: "1125 mm", marks: [{ area: example }] },
        objections: [],
      },
      {
        name: "a tenth of it",
        given: { diameter: "1200 mm", thickness: "8 mm", length: "1125 mm", marks: [{ area: "0.42 m²" }] },
        objections: [`0.42 m² of plate are cut for part X-01; its drawing makes ${example}`],
      },
      {
        name: "far more than it",
        given: { diameter: "1200 mm", thickness: "8 mm", length: "1125 mm", marks: [{ area: "7.00 m²" }] },
        objections: [`7.00 m² of plate are cut for part X-01; its drawing makes ${example}`],
      },
    ],
  }),
);

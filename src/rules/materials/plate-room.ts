import { derivedFrom } from "../../model/basis.ts";
import { anyOf, exists, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** A tape is read to a millimetre or two, and a plate is a little larger than it is bought. */
const slack = 0.01;

export const plateRoom = rule({
  id: "plate-room",
  title: "A part that is cut in one piece has room on its plate",
  basis: derivedFrom(
    "a disc lies within the width of its plate, a course with its girth at mid-wall along one side and its length along the other; a plate is rolled a little larger than it is bought, counted with one hundredth",
  ),
  kind: "part",
  when: [
    { path: "role", equals: ["shell-course", "furnace", "reversal-chamber", "tube-plate", "flat-plate"] },
    { path: "material.form", equals: "plate" },
    { path: "outsideDiameter", exists: true },
    { path: "<piece-mark:part>.certificateRow.width", exists: true },
    { path: "<piece-mark:part>.certificateRow.length", exists: true },
  ],
  severity: "query",
  owner: "shop",
  inputs: {
    role: text("role"),
    diameter: quantity("outsideDiameter", "mm"),
    thickness: quantity("nominalThickness", "mm"),
    length: optional(quantity("length", "mm")),
    marks: list(
      thing("<piece-mark:part>", {
        cutUp: exists("<piece-mark:parent>"),
        plate: thing("certificateRow", {
          width: optional(quantity("width", "mm")),
          length: optional(quantity("length", "mm")),
        }),
      }),
    ),
  },
  *check({ role, diameter, thickness, length, marks }, part) {
    const [mark, ...more] = marks.filter(({ cutUp }) => !cutUp);
    // A part of several pieces is welded together of what each plate gives.
    if (mark === undefined || more.length > 0) return;
    const { plate } = mark;
    if (plate.width === undefined || plate.length === undefined) return;
    const round = role === "tube-plate" || role === "flat-plate";
    if (!round && length === undefined) return;
    const girth = Math.PI * (diameter.value - thickness.value);
    const needs = round ? [diameter.value, diameter.value] : [girth, length?.value ?? 0];
    const [small = 0, large = 0] = needs.toSorted((a, b) => a - b);
    const [narrow = 0, long = 0] = [plate.width.value, plate.length.value].toSorted((a, b) => a - b);
    if (small <= narrow * (1 + slack) && large <= long * (1 + slack)) return;
    yield {
      at: "diameter",
      accuses: [],
      name: mark.$.id,
      message: `part ${part.name} takes ${Math.round(large)} mm by ${Math.round(small)} mm of plate; ${plate.$.name}, which it is cut from in one piece, is ${plate.width.text} by ${plate.length.text}`,
      why: round ? `a disc of ${diameter.text}` : `girth of ${diameter.text} outside, ${length?.text ?? ""} long`,
      hint: "compare the mark, the certificate and the drawing: another plate, another size, or pieces that are not marked",
      related: [{ at: plate, message: `${plate.width.text} by ${plate.length.text}` }],
    };
  },
  examples: [
    { name: "a disc with room", given: cut("tube-plate", "1900 mm", "2000 mm"), objections: [] },
    {
      name: "a disc wider than its plate",
      given: cut("tube-plate", "1900 mm", "1800 mm"),
      objections: [
        "part X-01 takes 1900 mm by 1900 mm of plate; CRT-007, which it is cut from in one piece, is 1800 mm by 6100 mm",
      ],
    },
    { name: "a course", given: cut("shell-course", "1924 mm", "2000 mm", "1975 mm"), objections: [] },
    {
      name: "a course longer than its plate is wide",
      given: cut("shell-course", "1924 mm", "1900 mm", "1975 mm"),
      objections: [
        "part X-01 takes 6007 mm by 1975 mm of plate; CRT-007, which it is cut from in one piece, is 1900 mm by 6100 mm",
      ],
    },
  ],
});

function cut(role: string, diameter: string, width: string, length?: string) {
  return {
    role,
    diameter,
    thickness: "12 mm",
    ...(length !== undefined && { length }),
    marks: [{ plate: { $: "CRT-007", width, length: "6100 mm" } }],
  };
}

export const barWithinProduct = rule({
  id: "impact-bar-within-product",
  title: "Impact test bars are no wider than what they were cut from is thick",
  basis: derivedFrom("a bar is machined out of the product"),
  kind: "material-certificate#rows",
  when: [{ path: "impact[].specimenWidth", exists: true }],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    thickness: quantity("thickness", "mm"),
    tests: anyOf(things("impact[]", { name: text("test"), width: optional(quantity("specimenWidth", "mm")) })),
  },
  *check({ thickness, tests }, row) {
    for (const test of tests)
      if (test.width !== undefined && test.width.low > thickness.high + thickness.halfUnit)
        yield {
          at: [test, "width"],
          accuses: [[test, "width"], "thickness"],
          name: test.name,
          message: `impact test ${test.name} of ${row.name} was made on bars ${test.width.text} wide; the product is ${thickness.text} thick`,
          why: "no such bar comes out of it",
          hint: "compare with the certificate; if it says so, ask the mill what was tested",
          related: [{ at: "thickness", message: thickness.text }],
        };
  },
  examples: [
    { name: "narrow", given: { thickness: "8 mm", tests: [{ name: "1", width: "7.5 mm" }] }, objections: [] },
    { name: "as thick", given: { thickness: "10 mm", tests: [{ name: "1", width: "10 mm" }] }, objections: [] },
    {
      name: "wider",
      given: { thickness: "8 mm", tests: [{ name: "1", width: "10 mm" }] },
      objections: ["impact test 1 of X-01 was made on bars 10 mm wide; the product is 8 mm thick"],
    },
  ],
});

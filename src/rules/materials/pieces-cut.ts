import { derivedFrom } from "../../model/basis.ts";
import { anyOf, count, exists, quantity, optional, things, type Thing } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const basis = derivedFrom("what is cut from a delivered piece is at most that piece");
const shared = "pieces cut for other books are not counted";
const hint = "compare the marks with the cutting plan and the delivery note; one of them names another row";

const pieces = {
  area: optional(quantity("area", "m²")),
  length: optional(quantity("length", "mm")),
  fromPiece: exists("parent"),
};
type Piece = Thing<typeof pieces>;
const cut = anyOf(things("<piece-mark:certificateRow>", pieces));

interface Cut {
  readonly piece: Piece;
  readonly measure: Measure;
}

/** Pieces that were cut from what was delivered: what was cut from such a piece is part of it. */
function cutsOf(marks: readonly Piece[], of: (piece: Piece) => Measure | undefined): readonly Cut[] {
  return marks.flatMap((piece) => {
    const measure = of(piece);
    return measure === undefined || piece.fromPiece ? [] : [{ piece, measure }];
  });
}

/** The least that was cut, if every figure was rounded up: only more than that can hold is wrong for certain. */
const leastOf = (cuts: readonly Cut[]) => cuts.reduce((sum, { measure }) => sum + measure.low - measure.halfUnit, 0);

const sumOf = (cuts: readonly Cut[]) => cuts.reduce((sum, { measure }) => sum + measure.value, 0);

const listed = (cuts: readonly Cut[]) => cuts.map(({ piece, measure }) => `${piece.$.name} ${measure.text}`).join(", ");

export const plateCut = rule({
  id: "plate-cut",
  title: "The areas stated as cut from a plate are at most the plate",
  basis,
  shared,
  kind: "material-certificate#rows",
  when: [
    { path: "form", equals: "plate" },
    { path: "width", exists: true },
    { path: "length", exists: true },
    { path: "pieces", exists: true },
  ],
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    width: optional(quantity("width", "mm")),
    length: optional(quantity("length", "mm")),
    delivered: optional(count("pieces")),
    marks: cut,
  },
  *check({ width, length, delivered, marks }, row) {
    if (width === undefined || length === undefined || delivered === undefined) return;
    const cuts = cutsOf(marks, ({ area }) => area);
    const plates = (delivered * (width.high + width.halfUnit) * (length.high + length.halfUnit)) / 1e6;
    const [first] = cuts;
    if (first !== undefined && leastOf(cuts) > plates)
      yield {
        at: [first.piece, "area"],
        message: `${sumOf(cuts).toFixed(2)} m² are cut from ${row.name}, which has ${((delivered * width.value * length.value) / 1e6).toFixed(2)} m²`,
        why: `${delivered === 1 ? "one plate" : `${delivered} plates`} of ${width.text} by ${length.text}; ${listed(cuts)}`,
        hint,
      };
  },
  examples: [
    {
      name: "two courses of a plate",
      given: { width: "1250 mm", length: "4000 mm", delivered: 1, marks: [{ area: "2.50 m²" }, { area: "2.50 m²" }] },
      objections: [],
    },
    {
      name: "more than the plate",
      given: {
        width: "1250 mm",
        length: "4000 mm",
        delivered: 1,
        marks: [
          { $: "PM-1", area: "2.50 m²" },
          { $: "PM-2", area: "2.60 m²" },
        ],
      },
      objections: ["5.10 m² are cut from X-01, which has 5.00 m²"],
    },
    {
      name: "a piece of a piece is part of it",
      given: {
        width: "1000 mm",
        length: "2000 mm",
        delivered: 1,
        marks: [{ area: "1.80 m²" }, { area: "0.90 m²", fromPiece: true }],
      },
      objections: [],
    },
  ],
});

export const lengthCut = rule({
  id: "length-cut",
  title: "The lengths stated as cut from a tube or bar are at most what was delivered",
  basis,
  shared,
  kind: "material-certificate#rows",
  when: [
    { path: "form", equals: ["tube", "pipe", "bar", "section"] },
    { path: "length", exists: true },
    { path: "pieces", exists: true },
  ],
  severity: "nonconformity",
  owner: "shop",
  inputs: { length: optional(quantity("length", "mm")), delivered: optional(count("pieces")), marks: cut },
  *check({ length, delivered, marks }, row) {
    if (length === undefined || delivered === undefined) return;
    const cuts = cutsOf(marks, (piece) => piece.length);
    const whole = delivered * (length.high + length.halfUnit);
    const [first] = cuts;
    if (first !== undefined && leastOf(cuts) > whole)
      yield {
        at: [first.piece, "length"],
        message: `${Number(sumOf(cuts).toFixed(1))} mm are cut from ${row.name}, which has ${Number((delivered * length.value).toFixed(1))} mm`,
        why: `${delivered === 1 ? "one length" : `${delivered} lengths`} of ${length.text}; ${listed(cuts)}`,
        hint,
      };
  },
  examples: [
    {
      name: "two necks of a tube",
      given: { length: "2000 mm", delivered: 1, marks: [{ length: "1000 mm" }, { length: "1000 mm" }] },
      objections: [],
    },
    {
      name: "more than the tube",
      given: { length: "2000 mm", delivered: 1, marks: [{ $: "PM-1", length: "2120 mm" }] },
      objections: ["2120 mm are cut from X-01, which has 2000 mm"],
    },
  ],
});

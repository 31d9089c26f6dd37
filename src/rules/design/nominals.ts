import { commonPractice, derivedFrom } from "../../model/basis.ts";
import { list, quantity, text, thing, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { ratioOf, sizeOf } from "../shared/sizes.ts";

/** A limit may lie this share of the nominal value away from it, or this far. */
const share = 0.25;
const far = sizeOf("2 mm");

interface Side {
  readonly id: string;
  readonly title: string;
  readonly path: string;
  readonly side: -1 | 1;
}

const sides: readonly Side[] = [
  {
    id: "nominal-minimum",
    title: "The least value allowed lies a little below the nominal one",
    path: "minimum",
    side: -1,
  },
  {
    id: "nominal-maximum",
    title: "The greatest value allowed lies a little above the nominal one",
    path: "maximum",
    side: 1,
  },
];

/** Nominal value and limits of a dimension stand near each other, on their own sides. */
const nearNominal: readonly Rule[] = sides.map(({ id, title, path, side }) => {
  const most = path === "maximum";
  return rule({
    id,
    title,
    basis: commonPractice("limits of a dimension lie on both sides of what the drawing asks for, and not far from it"),
    kind: "dimension-check#rows",
    when: [
      { path: "nominal", exists: true },
      { path, exists: true },
    ],
    severity: "query",
    owner: "quality",
    inputs: { nominal: text("nominal"), limit: text(path), feature: text("feature") },
    *check({ nominal, limit, feature }) {
      const [wanted, allowed] = [sizeOf(nominal), sizeOf(limit)];
      if (wanted === undefined || allowed === undefined || wanted.number === 0) return;
      const ratio = ratioOf(allowed, wanted);
      // A gap of 2 mm may be one of 1 or 3.
      const slack = far === undefined ? 0 : (ratioOf(far, wanted) ?? 0);
      const away = ratio === undefined ? undefined : side * (ratio - 1);
      if (away !== undefined && away >= -1e-9 && away <= Math.max(share, slack) + 1e-9) return;
      yield {
        at: "limit",
        accuses: [],
        message: `${feature} is nominally ${nominal}, and ${most ? "at most" : "at least"} ${limit} is permitted: ${away === undefined ? "they do not measure the same" : away < 0 ? "the limit lies on the other side" : "the limit lies far from it"}`,
        why: "both stand in one row",
        hint: "compare with the drawing and the sheet; correct the figure that is wrong, or answer this query with the drawing",
        related: [{ at: "nominal", message: `${nominal} here` }],
      };
    },
    examples: [
      { name: "near", given: { feature: "width", nominal: "100 mm", limit: `${100 + side * 5} mm` }, objections: [] },
      { name: "a small gap", given: { feature: "gap", nominal: "3 mm", limit: `${3 + side * 2} mm` }, objections: [] },
      {
        name: "far",
        given: { feature: "width", nominal: "100 mm", limit: most ? "1050 mm" : "9.5 mm" },
        objections: [
          `width is nominally 100 mm, and ${most ? "at most 1050 mm" : "at least 9.5 mm"} is permitted: the limit lies far from it`,
        ],
      },
      {
        name: "on the other side",
        given: { feature: "width", nominal: "100 mm", limit: `${100 - side} mm` },
        objections: [
          `width is nominally 100 mm, and ${most ? "at most 99 mm" : "at least 101 mm"} is permitted: the limit lies on the other side`,
        ],
      },
    ],
  });
});

const shape = rule({
  id: "joint-shape-limit",
  title: "No more offset or peaking of a joint is allowed than it is thick",
  basis: commonPractice("limits of form at a joint are shares of its thickness"),
  kind: "dimension-check#rows",
  when: [
    { path: "joint", exists: true },
    { path: "maximum", exists: true },
    { path: "nominal", exists: false },
  ],
  severity: "query",
  owner: "quality",
  inputs: {
    feature: text("feature"),
    limit: text("maximum"),
    parts: things("joint.parts[]", { thickness: quantity("nominalThickness", "mm") }),
  },
  *check({ feature, limit, parts }) {
    const allowed = sizeOf(limit);
    const [thinnest] = [...parts].sort((a, b) => a.thickness.value - b.thickness.value);
    if (allowed === undefined || thinnest === undefined) return;
    const thickness = sizeOf(thinnest.thickness.text);
    const ratio = thickness === undefined ? undefined : ratioOf(allowed, thickness);
    // Angles and the like are not held against a thickness.
    if (ratio === undefined || ratio <= 1 + 1e-9) return;
    yield {
      at: "limit",
      accuses: [],
      message: `${feature} may be at most ${limit}; part ${thinnest.$.name} at the joint is ${thinnest.thickness.text} thick`,
      why: "the limit is more than the thickness that is joined",
      hint: "compare with the drawing and the sheet; correct the limit, or answer this query with the drawing",
    };
  },
  examples: [
    {
      name: "half of it",
      given: { feature: "peaking", limit: "4.0 mm", parts: [{ thickness: "8 mm" }] },
      objections: [],
    },
    {
      name: "more than it",
      given: { feature: "peaking", limit: "40 mm", parts: [{ $: "P01", thickness: "8 mm" }, { thickness: "9 mm" }] },
      objections: ["peaking may be at most 40 mm; part P01 at the joint is 8 mm thick"],
    },
  ],
});

/** An id that people would write for a part: a letter and a digit. */
const telling = /^(?=.*\p{L})(?=.*\d)/u;

const namesPart = rule({
  id: "feature-of-part",
  title: "A dimension belongs to the part that its text names",
  basis: derivedFrom("the text of a feature and its link name one part"),
  kind: "dimension-check#rows",
  when: [{ path: "part", exists: true }],
  severity: "query",
  owner: "quality",
  inputs: { feature: text("feature"), part: thing("part", {}), parts: list(thing("book.part", {})) },
  *check({ feature, part, parts }) {
    const words = new Set(feature.split(/[^\p{L}\d_-]+/u));
    const named = parts.map(({ $ }) => $.id).filter((id) => telling.test(id) && words.has(id));
    if (named.length === 0 || named.includes(part.$.id)) return;
    yield {
      at: "part",
      accuses: [],
      message: `"${feature}" names part ${named.join(" and ")}, and is recorded of part ${part.$.name}`,
      why: "text and link stand in one row",
      hint: "compare with the sheet; correct the text or the part",
    };
  },
  examples: [
    {
      name: "the same",
      given: { feature: "crown, P03", part: { $: "P03" }, parts: [{ $: "P03" }, { $: "P04" }] },
      objections: [],
    },
    {
      name: "no part is named",
      given: { feature: "crown", part: { $: "P03" }, parts: [{ $: "P03" }] },
      objections: [],
    },
    {
      name: "another",
      given: { feature: "crown, P03", part: { $: "P04" }, parts: [{ $: "P03" }, { $: "P04" }] },
      objections: ['"crown, P03" names part P03, and is recorded of part P04'],
    },
  ],
});

/** What a row of a dimension check says of itself. */
export const dimensionRows: readonly Rule[] = [...nearNominal, shape, namesPart];

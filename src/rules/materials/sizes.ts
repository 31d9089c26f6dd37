import { derivedFrom } from "../../model/basis.ts";
import { quantity, text, thing } from "../../model/input.ts";
import { holds, type Measure } from "../../model/quantity.ts";
import type { Relation } from "../../model/compare.ts";
import { rule, type Rule } from "../../model/rule.ts";

interface Size {
  readonly id: string;
  readonly title: string;
  readonly basis: string;
  readonly forms: readonly string[];
  readonly ofPart: string;
  readonly ofRow: string;
  /** How the certified size must stand to that of the part. */
  readonly relation: Relation;
  readonly words: string;
}

const drawn = "a tube, a pipe and a formed end keep the size they were delivered in";
const worked = "what is made from a delivered piece is no larger than that piece";

const sizes: readonly Size[] = [
  {
    id: "certificate-diameter",
    title: "A certified tube or end has the outside diameter of its part",
    basis: drawn,
    forms: ["tube", "pipe", "formed-end"],
    ofPart: "outsideDiameter",
    ofRow: "diameter",
    relation: "=",
    words: "outside diameter",
  },
  {
    id: "certificate-wall",
    title: "A certified tube has the wall of its part",
    basis: drawn,
    forms: ["tube", "pipe"],
    ofPart: "nominalThickness",
    ofRow: "thickness",
    relation: "=",
    words: "wall",
  },
  {
    id: "certificate-blank-diameter",
    title: "A certified forging, fitting or bar is no smaller in diameter than its part",
    basis: worked,
    forms: ["forging", "fitting", "bar"],
    ofPart: "outsideDiameter",
    ofRow: "diameter",
    relation: ">=",
    words: "diameter",
  },
  {
    id: "certificate-section",
    title: "A certified forging, bar or bolt is no thinner than its part",
    basis: worked,
    forms: ["forging", "fitting", "bar", "section", "bolting"],
    ofPart: "nominalThickness",
    ofRow: "thickness",
    relation: ">=",
    words: "governing section",
  },
  {
    id: "certificate-length",
    title: "A certified tube, bar or section is no shorter than its part",
    basis: worked,
    forms: ["tube", "pipe", "bar", "section"],
    ofPart: "length",
    ofRow: "length",
    relation: ">=",
    words: "length",
  },
];

const fits = (certified: Measure, relation: Relation, part: Measure) => holds(certified, relation, part) !== "no";

/** Part → mark → certificate row: each size that both state. */
export const certifiedSizes: readonly Rule[] = sizes.map(
  ({ id, title, basis, forms, ofPart, ofRow, relation, words }) =>
    rule({
      id,
      title,
      basis: derivedFrom(basis),
      kind: "piece-mark",
      when: [
        { path: "part.material.form", equals: forms },
        { path: `part.${ofPart}`, exists: true },
        { path: `certificateRow.${ofRow}`, exists: true },
      ],
      severity: "nonconformity",
      owner: "purchasing",
      disputes: ["size"],
      inputs: {
        part: thing("part", { form: text("material.form") }),
        size: quantity(`part.${ofPart}`, "mm"),
        row: thing("certificateRow", { form: text("form"), size: quantity(ofRow, "mm") }),
      },
      *check({ part, size, row }, mark) {
        // Another product altogether is found by what the part asks for.
        if (row.form !== part.form || fits(row.size, relation, size)) return;
        yield {
          at: [row, "size"],
          message: `piece ${mark.name} comes from ${part.form} of ${words} ${row.size.text}; part ${part.$.name} has ${size.text}`,
          why: `certificate row ${row.$.name} states ${row.size.text}`,
          hint: "compare the stamp with the certificate and the drawing; correct the one that is wrong, or name the row it was cut from",
          related: [{ at: "size", message: `${size.text} here` }],
        };
      },
      examples: [
        {
          name: "the same",
          given: { part: { form: "tube" }, size: "50 mm", row: { form: "tube", size: "50 mm" } },
          objections: [],
        },
        {
          name: "a little smaller",
          given: {
            part: { $: "1", form: "tube" },
            size: "50 mm",
            row: { $: "CRT-1#A", form: "tube", size: "49.9 mm" },
          },
          objections: [`piece X-01 comes from tube of ${words} 49.9 mm; part 1 has 50 mm`],
        },
        {
          name: "larger",
          given: { part: { $: "1", form: "tube" }, size: "50 mm", row: { $: "CRT-1#A", form: "tube", size: "51 mm" } },
          objections: relation === "=" ? [`piece X-01 comes from tube of ${words} 51 mm; part 1 has 50 mm`] : [],
        },
      ],
    }),
);

import { commonPractice, derivedFrom } from "../../model/basis.ts";
import { anyOf, count, exists, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const counted = {
  pieces: count("pieces"),
  cutUp: exists("<piece-mark:parent>"),
};

export const piecesOfPart = rule({
  id: "pieces-of-part",
  title: "As many pieces are marked as the part has",
  basis: commonPractice("each piece of a part bears a mark, and no mark stands for a piece that is not there"),
  kind: "part",
  when: [{ path: "<piece-mark:part>.pieces", exists: true }],
  severity: "query",
  owner: "shop",
  inputs: { quantity: count("quantity"), marks: list(thing("<piece-mark:part>", counted)) },
  *check({ quantity: wanted, marks }, part) {
    // What was cut further is counted by its pieces.
    const whole = marks.filter(({ cutUp }) => !cutUp);
    const marked = whole.reduce((sum, { pieces }) => sum + pieces, 0);
    if (marked !== wanted)
      yield {
        at: "quantity",
        accuses: [],
        message: `part ${part.name} has ${wanted === 1 ? "one piece" : `${wanted} pieces`}; ${marked} are marked`,
        why: whole.map(({ $, pieces }) => `${$.name}: ${pieces}`).join(", "),
        hint: "compare the parts list with the marks and the pieces; where the part is put together of several, or spare pieces were cut, answer this query with that",
        related: whole.map((mark) => ({ at: [mark, "pieces"] as const, message: `${mark.pieces} here` })),
      };
  },
  examples: [
    { name: "two heats of one part", given: { quantity: 88, marks: [{ pieces: 60 }, { pieces: 28 }] }, objections: [] },
    {
      name: "one too few",
      given: { quantity: 88, marks: [{ pieces: 60 }, { pieces: 27 }] },
      objections: ["part X-01 has 88 pieces; 87 are marked"],
    },
    {
      name: "one too many",
      given: { quantity: 1, marks: [{ pieces: 2 }] },
      objections: ["part X-01 has one piece; 2 are marked"],
    },
    {
      name: "a piece that was cut into two",
      given: { quantity: 2, marks: [{ pieces: 1, cutUp: true }, { pieces: 1 }, { pieces: 1 }] },
      objections: [],
    },
  ],
});

export const piecesDelivered = rule({
  id: "pieces-delivered",
  title: "No more pieces are marked of what is delivered ready than were delivered",
  basis: derivedFrom("an end, a fitting or a bolt is one piece before and after it is marked"),
  shared: "pieces marked in other books are not counted",
  kind: "material-certificate#rows",
  when: [
    { path: "form", equals: ["formed-end", "fitting", "bolting"] },
    { path: "<piece-mark:certificateRow>.pieces", exists: true },
  ],
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    form: text("form"),
    delivered: count("pieces"),
    marks: list(thing("<piece-mark:certificateRow>", { ...counted, form: text("part.material.form") })),
  },
  *check({ form, delivered, marks }, row) {
    // A part of another product names this row by mistake: that is found by what the part asks for.
    const whole = marks.filter((mark) => !mark.cutUp && mark.form === form);
    const marked = whole.reduce((sum, { pieces }) => sum + pieces, 0);
    const [first] = whole;
    if (first !== undefined && marked > delivered)
      yield {
        at: [first, "pieces"],
        message: `${marked} pieces are marked of ${row.name}, which has ${delivered}`,
        why: whole.map(({ $, pieces }) => `${$.name}: ${pieces}`).join(", "),
        hint: "compare the marks with the delivery note; one of them is of another row",
      };
  },
  examples: [
    {
      name: "all of them",
      given: {
        form: "bolting",
        delivered: 2,
        marks: [
          { form: "bolting", pieces: 1 },
          { form: "bolting", pieces: 1 },
        ],
      },
      objections: [],
    },
    {
      name: "one more",
      given: { form: "bolting", delivered: 2, marks: [{ $: "PM-1", form: "bolting", pieces: 3 }] },
      objections: ["3 pieces are marked of X-01, which has 2"],
    },
  ],
});

export const lengthsOfParts = rule({
  id: "part-lengths-cut",
  title: "The tubes or bars delivered are long enough for all parts marked of them",
  basis: derivedFrom("what is cut from a delivered piece is at most that piece"),
  shared: "pieces cut for other books are not counted",
  kind: "material-certificate#rows",
  when: [
    { path: "form", equals: ["tube", "pipe", "bar", "section"] },
    { path: "length", exists: true },
    { path: "<piece-mark:certificateRow>.pieces", exists: true },
    { path: "<piece-mark:certificateRow>.part.length", exists: true },
  ],
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    length: quantity("length", "mm"),
    delivered: count("pieces"),
    marks: anyOf(
      things("<piece-mark:certificateRow>", {
        pieces: optional(count("pieces")),
        length: optional(quantity("part.length", "mm")),
        fromPiece: exists("parent"),
      }),
    ),
  },
  *check({ length, delivered, marks }, row) {
    const whole = marks.flatMap((mark) =>
      mark.fromPiece || mark.length === undefined ? [] : [{ mark, part: mark.length, pieces: mark.pieces ?? 1 }],
    );
    // As many of a length as go into one that was delivered.
    const needed = whole.reduce((sum, { part, pieces }) => sum + pieces * (part.low - part.halfUnit), 0);
    const there = delivered * (length.high + length.halfUnit);
    const [first] = whole;
    if (first !== undefined && needed > there)
      yield {
        at: [first.mark, "pieces"],
        message: `the parts marked of ${row.name} are ${Number(needed.toFixed(0))} mm long together; ${Number((delivered * length.value).toFixed(0))} mm were delivered`,
        why: whole.map(({ mark, part, pieces }) => `${mark.$.name}: ${pieces} of ${part.text}`).join(", "),
        hint: "compare lengths and number of the parts with the drawing, and the marks with the delivery note",
      };
  },
  examples: [
    {
      name: "eight stays of a bar",
      given: { length: "3000 mm", delivered: 1, marks: [{ pieces: 8, length: "290 mm" }] },
      objections: [],
    },
    {
      name: "one more than goes in",
      given: { length: "3000 mm", delivered: 1, marks: [{ $: "PM-1", pieces: 11, length: "290 mm" }] },
      objections: ["the parts marked of X-01 are 3185 mm long together; 3000 mm were delivered"],
    },
  ],
});

export const lengthOfPart = rule({
  id: "piece-length",
  title: "No less is cut for a part than it is long",
  basis: derivedFrom("what is cut for a part is the part and what is machined away"),
  kind: "piece-mark",
  when: [
    { path: "part.material.form", equals: ["tube", "pipe", "bar", "section"] },
    { path: "length", exists: true },
    { path: "part.length", exists: true },
  ],
  severity: "query",
  owner: "shop",
  inputs: {
    length: quantity("length", "mm"),
    pieces: optional(count("pieces")),
    part: thing("part", { length: quantity("length", "mm") }),
  },
  *check({ length, pieces = 1, part }, mark) {
    const all = pieces * part.length.value;
    const rounding = length.halfUnit + pieces * part.length.halfUnit;
    if (length.value + rounding >= all) return;
    yield {
      at: "length",
      accuses: [],
      message: `${length.text} are cut for piece ${mark.name}; part ${part.$.name} is ${part.length.text} long`,
      why: pieces === 1 ? "one piece bears the mark" : `${pieces} pieces bear the mark`,
      hint: "compare the length with the cutting plan and the drawing; correct the one that is wrong",
      related: [{ at: [part, "length"], message: `${part.length.text} here` }],
    };
  },
  examples: [
    { name: "as long as the part", given: { length: "120 mm", pieces: 1, part: { length: "120 mm" } }, objections: [] },
    {
      name: "two of them, and the cut",
      given: { length: "245 mm", pieces: 2, part: { length: "120 mm" } },
      objections: [],
    },
    {
      name: "shorter than the part",
      given: { length: "118 mm", part: { $: "P08", length: "120 mm" } },
      objections: ["118 mm are cut for piece X-01; part P08 is 120 mm long"],
    },
  ],
});

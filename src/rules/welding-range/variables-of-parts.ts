import { fromPiece } from "./pieces.ts";
import type { Match } from "./range.ts";
import { ends, name, names, ofEach, value } from "./side.ts";
import { by, inTest, none, ofJoint, unprinted, type Variable } from "./variable.ts";

/** A register of welding procedures to EN ISO 15614-1:2017, level 2, with the tests they rest on. */
const register = "register of welding procedures in a published set of forms, slideshare.net/KusdinobinPaad";

const within: Match = (held, asked) => asked === held || asked.startsWith(`${held}.`);

/** What is welded: steel, sizes, type of joint and detail. */
export const partVariables: readonly Variable[] = [
  {
    id: "material-group",
    ofWhole: true,
    title: "material group",
    match: within,
    piece: fromPiece.group,
    printed: names("range.materialGroups[]", true),
    procedure: names("materialGroups[]", true),
    joint: ofEach("parts[]", "table(grade-group, material.standard, material.edition, material.grade).group"),
    cells: { "procedure to run": none("a run names no steel: the parts of its joint do") },
    examples: {
      piece: { ...inTest, materialGroup: "1.2" },
      held: ["1.1", "1.2"],
      inside: ["1.1"],
      outside: ["1.1", "8.1"],
      said: "8.1",
      range: "1.1, 1.2",
      also: [
        {
          name: "a test in group 1.2",
          piece: { ...inTest, materialGroup: "1.2" },
          printed: ["1.1", "1.2"],
          source: "bck.vn, essential variables of ISO 15614-1: group 1.2 qualifies steels in group 1.1 and 1.2",
        },
      ],
    },
  },
  {
    id: "yield-strength",
    title: "yield strength within the material group",
    cells: {
      "test piece to range": none("a certificate prints groups, not grades"),
      "range to procedure": none("a procedure names groups, not grades"),
      "procedure to joint": by("joint-qualified"),
      "procedure to run": ofJoint,
    },
  },
  {
    id: "parent-thickness",
    title: "thickness of the parent metal",
    piece: fromPiece.thickness,
    printed: ends("range.thickness", "mm"),
    cells: {
      "range to procedure": by("procedure-qualified"),
      "procedure to joint": by("joint-in-procedure"),
      "procedure to run": ofJoint,
    },
    examples: {
      piece: { ...inTest, jointType: "butt", detail: "ss nb", thickness: "8.0 mm" },
      held: ["3.0 mm", "16.0 mm"],
      inside: ["5.0 mm", "16.0 mm"],
      outside: ["3.0 mm", "16.1 mm"],
      said: "3.0 mm to 16.1 mm",
      range: "3 mm to 16 mm",
      also: [
        ["4.00 mm", "3.00 mm", "8.00 mm"],
        ["12.00 mm", "3.00 mm", "24.00 mm"],
        ["50.00 mm", "25.00 mm", "100.00 mm"],
      ].flatMap(([thickness = "", from = "", to = ""]) => {
        const piece = { ...inTest, jointType: "butt", detail: "ss nb", layers: "multi", thickness };
        const source = `${register}: tested ${thickness}, qualified ${from} to ${to}`;
        const [thin, thick] = [`${Number.parseFloat(from) - 0.1} mm`, `${Number.parseFloat(to) + 0.1} mm`];
        const range = `${Number.parseFloat(from)} mm to ${Number.parseFloat(to)} mm`;
        return [
          { name: `${thickness}, printed`, piece, printed: [from, to], source },
          { name: `${thickness}, thinner`, piece, printed: [thin, to], said: [`${thin} to ${to}`, range], source },
          {
            name: `${thickness}, thicker`,
            piece,
            printed: [from, thick],
            said: [`${from} to ${thick}`, range],
            source,
          },
        ] as const;
      }),
    },
  },
  {
    id: "deposited-thickness",
    title: "deposited thickness of each process",
    cells: {
      "test piece to range": none("a record states one thickness, not that of each process"),
      "range to procedure": none("neither states the deposit of each process"),
      "procedure to joint": none("a procedure states the thickness of the parts alone"),
      "procedure to run": by("deposited-fits-joint"),
    },
  },
  {
    id: "throat",
    ofWhole: true,
    title: "throat of fillet welds",
    piece: fromPiece.throat,
    printed: ends("range.throat", "mm"),
    procedure: ends("throat", "mm"),
    joint: value("throat", "mm"),
    cells: { "procedure to run": none("a weld log has no throat: visual tests and gauges have") },
    examples: {
      piece: { ...inTest, jointType: "fillet", detail: "sl", throat: "4.0 mm" },
      held: ["3.0 mm", "6.0 mm"],
      inside: ["4.0 mm", "4.0 mm"],
      outside: ["6.1 mm", "6.1 mm"],
      said: "6.1 mm",
      range: "3 mm to 6 mm",
      also: [
        {
          name: "several runs: any throat",
          piece: { ...inTest, jointType: "fillet", detail: "ml", throat: "8.0 mm" },
          printed: ["3 mm", "40 mm"],
          source:
            "procedure to BS EN ISO 15614-1:2017, level 2, multi-pass, scribd.com/document/557127510: throat no min., no max.",
        },
      ],
    },
  },
  {
    id: "outside-diameter",
    ofWhole: true,
    title: "outside diameter",
    piece: fromPiece.diameter,
    printed: ends("range.outsideDiameter", "mm"),
    procedure: ends("outsideDiameter", "mm"),
    joint: value("outsideDiameter", "mm"),
    cells: { "procedure to run": ofJoint },
    examples: {
      piece: { ...inTest, product: "pipe", diameter: "60.3 mm", positions: ["PA"] },
      held: ["30.15 mm"],
      inside: ["60.3 mm", "60.3 mm"],
      outside: ["30.0 mm", "30.0 mm"],
      said: "30.0 mm",
      range: "from 30.15 mm",
      also: [
        {
          name: "a plate, for pipes that are turned",
          piece: { ...inTest, product: "plate", positions: ["PA"], printedPositions: ["PA", "PC"] },
          printed: ["150 mm"],
          source: `${register}: tested on plate, pipe from 150 mm in PC and turned in PA`,
        },
        {
          name: "a plate, for pipes that stand still",
          piece: { ...inTest, product: "plate", positions: ["PF"], printedPositions: ["PA", "PF"] },
          printed: ["150 mm"],
          said: ["from 150 mm", "from 500 mm"],
        },
        {
          name: "a small pipe",
          piece: { ...inTest, product: "pipe", diameter: "21.3 mm", positions: ["PA"] },
          printed: ["10.7 mm", "42.6 mm"],
        },
      ],
    },
  },
  {
    id: "product",
    title: "plate or pipe",
    cells: {
      "test piece to range": by("qualification-outside-diameter"),
      "range to procedure": by("procedure-outside-diameter-qualified"),
      "procedure to joint": by("joint-outside-diameter-in-procedure"),
      "procedure to run": ofJoint,
    },
  },
  {
    id: "branch-angle",
    title: "angle of a branch",
    cells: {
      "test piece to range": none("no angle is recorded: branches are taken to stand at 60° to 90°"),
      "range to procedure": none("no angle is recorded: branches are taken to stand at 60° to 90°"),
      "procedure to joint": none("no angle is recorded: branches are taken to stand at 60° to 90°"),
      "procedure to run": ofJoint,
    },
  },
  {
    id: "joint-type",
    ofWhole: true,
    title: "type of joint",
    piece: fromPiece.joint,
    printed: names("range.jointTypes[]", true),
    procedure: names("jointTypes[]", true),
    joint: name("type", true),
    cells: { "procedure to run": ofJoint },
    examples: {
      piece: { ...inTest, jointType: "fillet" },
      held: ["fillet", "attachment"],
      inside: ["fillet"],
      outside: ["butt"],
      said: "butt",
      range: "fillet, attachment",
    },
  },
  {
    id: "detail",
    title: "weld detail",
    piece: fromPiece.detail,
    procedure: names("details[]"),
    joint: name("detail", true),
    cells: { "test piece to range": unprinted, "procedure to run": by("run-layers") },
    examples: {
      piece: { ...inTest, detail: "bs" },
      held: ["bs", "ml"],
      inside: ["bs"],
      outside: ["ss nb"],
      said: "ss nb",
      range: "bs, ml",
    },
  },
];

import { sameClass } from "../welding/filler-class.ts";
import { gasesIn } from "./gases.ts";
import { fromPiece, type FromPiece } from "./pieces.ts";
import { namesOf, type Match } from "./range.ts";
import { ends, limit, name, names, ofEach, value, yesOrNo, type Side } from "./side.ts";

/** Two neighbours on the way from the test piece to the weld. */
export const pairs = ["test piece to range", "range to procedure", "procedure to joint", "procedure to run"] as const;
export type Pair = (typeof pairs)[number];

/** What judges a cell where no rule is made from the sides: one there is, or the reason why there is no method. */
export type Cell = { readonly rule: string } | { readonly none: string };

export interface Variable {
  readonly id: string;
  /** As it is called in sentences: "material group". */
  readonly title: string;
  readonly match?: Match;
  /** How the neighbours state it; a pair with both sides has a rule of its own, made from them. */
  readonly piece?: FromPiece;
  readonly printed?: Side;
  readonly procedure?: Side;
  readonly joint?: Side;
  readonly run?: Side;
  /** A procedure that says nothing of it, though a test limits it, leaves it to the welder. */
  readonly mustState?: true;
  readonly cells?: Readonly<Partial<Record<Pair, Cell>>>;
  /** What is held, and what lies inside and outside of it, as records state it; of the test piece, its own inputs. */
  readonly examples?: {
    readonly piece: Readonly<Record<string, unknown>>;
    /** The range as it is printed, which is that of the piece. */
    readonly held: readonly string[];
    readonly inside: readonly string[];
    readonly outside: readonly string[];
    /** How the outside is said, and the range of the piece. */
    readonly said: string;
    readonly range: string;
    /** Further test pieces and what certificates print of them: inside, or what is said of the outside. */
    readonly also?: readonly {
      readonly name: string;
      readonly piece: Readonly<Record<string, unknown>>;
      readonly printed: readonly string[];
      readonly said?: readonly [outside: string, range: string];
    }[];
  };
}

const none = (why: string): Cell => ({ none: why });
const by = (rule: string): Cell => ({ rule });

const within: Match = (held, asked) => asked === held || asked.startsWith(`${held}.`);
const gas: Side = {
  ...name("shieldingGas"),
  read: ({ name: got }) => namesOf(typeof got === "string" ? gasesIn(got) : []),
};
const unprinted = none("the certificate prints no range of it: the procedure is held against the test piece itself");
const noJoint = none("the weld map does not say it: the procedure does");
const ofJoint = none("it is the joint's, not the run's");
const byWindow = by("run-in-window");
const byHeat = none("the heat input is what the test limits");
const inTest = { edition: "2017", standard: "EN ISO 15614-1" };

/** The variables of a weld, as EN ISO 15614-1 lists them, with how each neighbour states them. */
export const variables: readonly Variable[] = [
  {
    id: "process",
    title: "welding process",
    piece: fromPiece.process,
    printed: names("range.processes[]", true),
    procedure: names("processes[]", true),
    joint: names("processes[]", true),
    run: name("process", true),
    cells: { "range to procedure": by("procedure-qualified") },
    examples: {
      piece: { processes: ["135"] },
      held: ["135"],
      inside: ["135"],
      outside: ["135", "136"],
      said: "136",
      range: "135",
    },
  },
  {
    id: "mechanisation",
    title: "degree of mechanisation",
    piece: fromPiece.mechanisation,
    procedure: name("mechanisation"),
    cells: {
      "test piece to range": unprinted,
      "procedure to joint": noJoint,
      "procedure to run": none("a weld log does not say how far welding was mechanised: its process does"),
    },
    examples: {
      piece: { mechanisation: "partly mechanised" },
      held: ["partly mechanised"],
      inside: ["partly mechanised"],
      outside: ["fully mechanised"],
      said: "fully mechanised",
      range: "partly mechanised",
    },
  },
  {
    id: "material-group",
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
    },
  },
  {
    id: "outside-diameter",
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
  {
    id: "position",
    title: "welding position",
    piece: fromPiece.position,
    printed: names("range.positions[]", true),
    procedure: names("positions[]", true),
    joint: names("positions[]", true),
    run: name("position"),
    examples: {
      piece: { ...inTest, positions: ["PA"], impact: true, hardness: false },
      held: ["PA"],
      inside: ["PA"],
      outside: ["PG"],
      said: "PG",
      range: "PA",
      also: [
        {
          name: "without impact and hardness tests one covers all but downwards",
          piece: { ...inTest, positions: ["PA"], impact: false, hardness: false },
          printed: ["PA", "PC", "PE", "PF"],
        },
        {
          name: "downwards by a test of its own only",
          piece: { ...inTest, positions: ["PF"], impact: false, hardness: false },
          printed: ["PF", "PG"],
          said: ["PG", "PA, PB, PC, PD, PE, PF, PH, H-L045"],
        },
      ],
    },
  },
  {
    id: "transfer-mode",
    title: "transfer mode",
    piece: fromPiece.transfer,
    procedure: name("transferMode"),
    mustState: true,
    cells: {
      "test piece to range": unprinted,
      "procedure to joint": noJoint,
      "procedure to run": none("a weld log does not record the transfer mode: current and voltage lie in the window"),
    },
    examples: {
      piece: { ...inTest, transferMode: "spray" },
      held: ["globular", "spray", "pulsed"],
      inside: ["pulsed"],
      outside: ["dip"],
      said: "dip",
      range: "globular, spray, pulsed",
    },
  },
  {
    id: "filler",
    title: "filler",
    match: sameClass,
    piece: fromPiece.filler,
    procedure: names("fillers[]"),
    cells: {
      "test piece to range": unprinted,
      "procedure to joint": noJoint,
      "procedure to run": by("filler-certified"),
    },
    examples: {
      piece: { fillers: ["G 42 4 M21 3Si1"] },
      held: ["G 42 4 M21 3Si1"],
      inside: ["EN ISO 14341-A - G 42 4 M21 3Si1"],
      outside: ["G 46 5 M21 4Mo"],
      said: "G 46 5 M21 4Mo",
      range: "G 42 4 M21 3Si1",
    },
  },
  {
    id: "filler-make",
    title: "make of the filler",
    cells: {
      "test piece to range": none("no record of a test names the make of its filler"),
      "range to procedure": none("no record of a test names the make of its filler"),
      "procedure to joint": noJoint,
      "procedure to run": none("procedures name classes, not makes"),
    },
  },
  {
    id: "filler-size",
    title: "size of the filler",
    cells: {
      "test piece to range": none("the size may change while the heat input stays in its range"),
      "range to procedure": none("the size may change while the heat input stays in its range"),
      "procedure to joint": noJoint,
      "procedure to run": byWindow,
    },
  },
  {
    id: "shielding-gas",
    title: "shielding gas",
    piece: fromPiece.gas,
    procedure: gas,
    mustState: true,
    cells: {
      "test piece to range": unprinted,
      "procedure to joint": noJoint,
      "procedure to run": by("filler-certified"),
    },
    examples: {
      piece: { gas: "EN ISO 14175 - M21" },
      held: ["M21"],
      inside: ["ISO 14175 M21"],
      outside: ["M21 or C1"],
      said: "C1",
      range: "M21",
    },
  },
  {
    id: "current-kind",
    title: "kind of current",
    piece: fromPiece.current,
    procedure: name("current"),
    mustState: true,
    cells: {
      "test piece to range": unprinted,
      "procedure to joint": noJoint,
      "procedure to run": none("a weld log does not record the polarity"),
    },
    examples: {
      piece: { current: "DC+" },
      held: ["DC+"],
      inside: ["DC+"],
      outside: ["DC-"],
      said: "DC-",
      range: "DC+",
    },
  },
  ...(["current", "voltage", "travel-speed"] as const).map((id): Variable => ({
    id,
    title: id === "current" ? "welding current" : id === "voltage" ? "arc voltage" : "travel speed",
    cells: {
      "test piece to range": byHeat,
      "range to procedure": byHeat,
      "procedure to joint": noJoint,
      "procedure to run": byWindow,
    },
  })),
  {
    id: "heat-input",
    title: "heat input",
    piece: fromPiece.heatInput,
    printed: ends("range.heatInput", "kJ/mm"),
    procedure: ends("heatInput", "kJ/mm"),
    mustState: true,
    cells: { "procedure to joint": noJoint, "procedure to run": by("heat-input") },
    examples: {
      piece: { ...inTest, heatInput: "1.00 kJ/mm", impact: true, hardness: true },
      held: ["0.75 kJ/mm", "1.25 kJ/mm"],
      inside: ["0.75 kJ/mm", "1.25 kJ/mm"],
      outside: ["0.80 kJ/mm", "1.30 kJ/mm"],
      said: "0.80 kJ/mm to 1.30 kJ/mm",
      range: "0.75 kJ/mm to 1.25 kJ/mm",
    },
  },
  {
    id: "preheat",
    title: "preheat temperature",
    piece: fromPiece.preheat,
    printed: limit("range.preheat", "°C", "from"),
    procedure: limit("preheat", "°C", "from", true),
    cells: { "procedure to joint": noJoint, "procedure to run": by("run-temperatures") },
    examples: {
      piece: { ...inTest, preheat: "100 °C" },
      held: ["100 °C"],
      inside: ["120 °C"],
      outside: ["20 °C"],
      said: "from 20 °C",
      range: "from 100 °C",
    },
  },
  {
    id: "interpass",
    title: "interpass temperature",
    piece: fromPiece.interpass,
    printed: limit("range.interpass", "°C", "to"),
    procedure: limit("interpass", "°C", "to", true),
    cells: { "procedure to joint": noJoint, "procedure to run": by("run-temperatures") },
    examples: {
      piece: { ...inTest, interpass: "220 °C" },
      held: ["220 °C"],
      inside: ["200 °C"],
      outside: ["250 °C"],
      said: "up to 250 °C",
      range: "up to 220 °C",
    },
  },
  {
    id: "post-heating",
    title: "post-heating",
    cells: {
      "test piece to range": none("neither records nor procedures state a hydrogen release treatment"),
      "range to procedure": none("neither records nor procedures state a hydrogen release treatment"),
      "procedure to joint": noJoint,
      "procedure to run": none("a weld log does not state a hydrogen release treatment"),
    },
  },
  {
    id: "heat-treatment",
    title: "heat treatment after welding",
    piece: fromPiece.heatTreatment,
    procedure: yesOrNo("postWeldHeatTreatment", true),
    cells: {
      "test piece to range": unprinted,
      "procedure to joint": by("heat-treatment-planned"),
      "procedure to run": ofJoint,
    },
    examples: {
      piece: { heatTreated: false },
      held: ["no"],
      inside: ["no"],
      outside: ["yes"],
      said: "yes",
      range: "no",
    },
  },
];

/** Whether a pair of a variable has a rule made from its sides. */
export function isMade({ cells, piece, printed, procedure, joint, run }: Variable, pair: Pair): boolean {
  if (cells?.[pair] !== undefined) return false;
  switch (pair) {
    case "test piece to range":
      return piece !== undefined && printed !== undefined;
    case "range to procedure":
      return piece !== undefined && procedure !== undefined;
    case "procedure to joint":
      return procedure !== undefined && joint !== undefined;
    case "procedure to run":
      return procedure !== undefined && run !== undefined;
  }
}

/** Id of the rule made for a pair of a variable. */
export function madeRule({ id }: Variable, pair: Pair): string {
  switch (pair) {
    case "test piece to range":
      return `qualification-${id}`;
    case "range to procedure":
      return `procedure-${id}-qualified`;
    case "procedure to joint":
      return `joint-${id}-in-procedure`;
    case "procedure to run":
      return `run-${id}-in-procedure`;
  }
}

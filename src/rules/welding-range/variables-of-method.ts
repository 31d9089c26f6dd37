import { sameClass } from "../welding/filler-class.ts";
import { gasesIn } from "./gases.ts";
import { fromPiece } from "./pieces.ts";
import { namesOf } from "./range.ts";
import { name, names, type Side } from "./side.ts";
import { by, inTest, noJoint, none, unprinted, type Variable } from "./variable.ts";

const gas: Side = {
  ...name("shieldingGas"),
  read: ({ name: got }) => namesOf(typeof got === "string" ? gasesIn(got) : []),
};

/** How a weld is made: process, position, fillers, gas and kind of current. */
export const methodVariables: readonly Variable[] = [
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
    procedure: names("transferModes[]"),
    mustState: "transferModes",
    cells: {
      "test piece to range": unprinted,
      "procedure to joint": noJoint,
      "procedure to run": none("a weld log does not record the transfer mode: current and voltage lie in the window"),
    },
    examples: {
      piece: { ...inTest, transferModes: ["spray"] },
      held: ["globular", "spray", "pulsed"],
      inside: ["pulsed"],
      outside: ["dip", "spray"],
      said: "dip",
      range: "globular, spray, pulsed",
      also: [
        {
          name: "a root by dip and a cap by spray cover each its own",
          piece: { ...inTest, transferModes: ["dip", "spray"] },
          printed: ["dip", "pulsed"],
        },
      ],
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
      "procedure to run": by("run-filler-size"),
    },
  },
  {
    id: "shielding-gas",
    title: "shielding gas",
    piece: fromPiece.gas,
    procedure: gas,
    mustState: "gas",
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
    mustState: "current",
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
];

import { fromMemory } from "../../model/basis.ts";
import {
  list,
  optional,
  quantity,
  text,
  thing,
  things,
  type Inputs,
  type Thing,
  type Values,
} from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { fromPiece, piece, rangeFrom, rangeTables, type FromPiece } from "./pieces.ts";
import { beyond, namesOf, oneName, saidRange, spanOf, spread, type Match, type Range } from "./range.ts";

/** What one joint asks of a qualification, all at once. */
const need = {
  type: text("type"),
  detail: text("detail"),
  positions: list(text("positions[]")),
  thicknesses: list(quantity("thicknesses[]", "mm")),
  throat: optional(quantity("throat", "mm")),
  diameter: optional(quantity("outsideDiameter", "mm")),
  parts: things("parts[]", {
    group: text("table(grade-group, material.standard, material.edition, material.grade).group"),
    grade: text("material.grade"),
  }),
};
type Need = Values<typeof need>;

const qualification = {
  ...piece,
  printedProcesses: list(text("range.processes[]")),
  printedJoints: list(text("range.jointTypes[]")),
  printedGroups: list(text("range.materialGroups[]")),
  printedFrom: optional(quantity("range.thickness.minimum", "mm")),
  printedTo: optional(quantity("range.thickness.maximum", "mm")),
  printedThroatFrom: optional(quantity("range.throat.minimum", "mm")),
  printedThroatTo: optional(quantity("range.throat.maximum", "mm")),
  printedDiameterFrom: optional(quantity("range.outsideDiameter.minimum", "mm")),
  printedDiameterTo: optional(quantity("range.outsideDiameter.maximum", "mm")),
} satisfies Inputs;
type Qualification = Thing<typeof qualification>;

/** The same of its procedure, so that what is doubted there is not found again here. */
const procedure = {
  types: list(text("jointTypes[]")),
  positions: list(text("positions[]")),
  groups: list(text("materialGroups[]")),
  details: optional(list(text("details[]"))),
  from: optional(quantity("thickness.minimum", "mm")),
  to: optional(quantity("thickness.maximum", "mm")),
  throatFrom: optional(quantity("throat.minimum", "mm")),
  throatTo: optional(quantity("throat.maximum", "mm")),
  diameterFrom: optional(quantity("outsideDiameter.minimum", "mm")),
  diameterTo: optional(quantity("outsideDiameter.maximum", "mm")),
} satisfies Inputs;
type Procedure = Thing<typeof procedure>;

const within: Match = (held, asked) => asked === held || asked.startsWith(`${held}.`);
const same: Match = (held, asked) => held === asked;

interface Asked {
  readonly title: string;
  readonly match?: Match;
  readonly asked: (joint: Need) => Range | undefined;
  readonly printed?: (one: Qualification) => Range | undefined;
  readonly way?: FromPiece;
  readonly specified?: (one: Procedure) => Range | undefined;
}

const asks: readonly Asked[] = [
  {
    title: "type of joint",
    asked: ({ type }) => oneName(type),
    printed: ({ printedJoints }) => namesOf(printedJoints),
    way: fromPiece.joint,
    specified: ({ types }) => namesOf(types),
  },
  {
    title: "material group",
    match: within,
    asked: ({ parts }) => namesOf([...new Set(parts.map(({ group }) => group))]),
    printed: ({ printedGroups }) => namesOf(printedGroups),
    way: fromPiece.group,
    specified: ({ groups }) => namesOf(groups),
  },
  {
    title: "thickness",
    asked: ({ thicknesses }) => spread(thicknesses),
    printed: ({ printedFrom, printedTo }) => spanOf(printedFrom, printedTo),
    way: fromPiece.thickness,
    specified: ({ from, to }) => spanOf(from, to),
  },
  {
    title: "throat",
    asked: ({ throat }) => spanOf(throat, throat),
    printed: ({ printedThroatFrom, printedThroatTo }) => spanOf(printedThroatFrom, printedThroatTo),
    way: fromPiece.throat,
    specified: ({ throatFrom, throatTo }) => spanOf(throatFrom, throatTo),
  },
  {
    title: "outside diameter",
    asked: ({ diameter }) => spanOf(diameter, diameter),
    printed: ({ printedDiameterFrom, printedDiameterTo }) => spanOf(printedDiameterFrom, printedDiameterTo),
    way: fromPiece.diameter,
    specified: ({ diameterFrom, diameterTo }) => spanOf(diameterFrom, diameterTo),
  },
  {
    title: "weld detail",
    asked: ({ detail }) => oneName(detail),
    way: fromPiece.detail,
    specified: ({ details }) => namesOf(details ?? []),
  },
  {
    title: "position",
    asked: ({ positions }) => namesOf(positions),
    printed: ({ printedPositions }) => namesOf(printedPositions),
    way: fromPiece.position,
    specified: ({ positions }) => namesOf(positions),
  },
];

/** What a qualification does not cover of a joint that its procedure is for, each as the range held. */
function uncovered(
  one: Qualification,
  joint: Need,
  specified: Procedure,
  tables: Values<typeof rangeTables>,
): readonly string[] {
  const problems = asks.flatMap(({ title, match = same, asked, printed, way, specified: inProcedure }) => {
    const wanted = asked(joint);
    if (wanted === undefined) return [];
    const plan = inProcedure?.(specified);
    // What lies outside of the procedure itself is said of the procedure.
    if (plan !== undefined && beyond([plan], wanted, match) !== undefined) return [];
    const held = printed?.(one) ?? (way === undefined ? undefined : rangeFrom(way, one, tables));
    return held === undefined || beyond([held], wanted, match) === undefined ? [] : [`${title} ${saidRange(held)}`];
  });
  const tested = tables.yields(one.grade).quantity("yield");
  const strong = joint.parts.flatMap(({ grade }) => {
    const own = tables.yields(grade).quantity("yield");
    return isStronger(own, tested) ? [grade] : [];
  });
  const named = strong.length === 0 ? [] : [`steel up to the yield strength of ${one.grade}, not ${strong.join(", ")}`];
  return [...problems, ...named];
}

const isStronger = (own: Measure | undefined, tested: Measure | undefined): boolean =>
  own !== undefined && tested !== undefined && own.value > tested.value;

export const jointQualified = rule({
  id: "joint-qualified",
  title:
    "One qualification of its procedure covers a joint in all at once: type, group and yield strength, thickness, throat, diameter, detail and position",
  basis: fromMemory("EN ISO 15614-1", undefined, "ranges of qualification, level 2; each table says its editions"),
  kind: "joint",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    ...need,
    ...rangeTables,
    processes: list(text("processes[]")),
    procedure: thing("weldingProcedure", { ...procedure, qualifications: things("qualifications[]", qualification) }),
  },
  *check(values, joint) {
    const { procedure: specified, processes } = values;
    for (const process of processes) {
      const held = specified.qualifications.filter((one) => one.printedProcesses.includes(process));
      if (held.length === 0) continue;
      const lacking = held.map((one) => uncovered(one, values, specified, values));
      if (lacking.some((one) => one.length === 0)) continue;
      yield {
        at: "processes",
        accuses: [],
        name: process,
        message: `no qualification of ${specified.$.name} covers joint ${joint.name}, welded by ${process}`,
        why: held.map((one, index) => `${one.$.name} covers only ${(lacking[index] ?? []).join(", ")}`).join(" · "),
        hint: "name a procedure whose qualification covers the joint, or have a test piece welded; else raise a nonconformity report",
        related: held.map((one) => ({ at: one, message: "named as qualification" })),
      };
    }
  },
  examples: [
    { name: "covered by one", given: asked({}), objections: [] },
    {
      name: "by a weaker steel of the same group",
      given: asked({ parts: [{ group: "1.1", grade: "P265GH" }] }, { grade: "P235GH" }),
      objections: ["no qualification of WPS-18 revision 1 covers joint X-01, welded by 135"],
    },
    {
      name: "a stronger steel was tested",
      given: asked({ parts: [{ group: "1.1", grade: "P235GH" }] }),
      objections: [],
    },
    {
      name: "a steel whose yield strength no table names",
      given: asked({ parts: [{ group: "1.1", grade: "A 106 B" }] }),
      objections: [],
    },
    {
      name: "each variable by another test, the joint by none",
      given: asked({ detail: "sl", throat: "8 mm" }),
      objections: ["no qualification of WPS-18 revision 1 covers joint X-01, welded by 135"],
    },
    {
      name: "outside of its procedure, which is said of the procedure",
      given: asked({ positions: ["PG"] }),
      objections: [],
    },
    {
      name: "to a standard without tables: as printed",
      given: asked({}, { standard: "EN ISO 15613", edition: "2005" }),
      objections: [],
    },
  ],
});

/** An attachment welded to a procedure that rests on a multi-run and on a single-run fillet weld. */
function asked(joint: Readonly<Record<string, unknown>>, own: Readonly<Record<string, unknown>> = {}) {
  const test = {
    standard: "EN ISO 15614-1",
    edition: "2017",
    processes: ["135"],
    jointType: "fillet",
    product: "plate",
    materialGroup: "1.1",
    grade: "P265GH",
    thickness: "15.0 mm",
    positions: ["PB"],
    impact: false,
    hardness: false,
    printedProcesses: ["135"],
    printedJoints: ["fillet", "attachment"],
    printedGroups: ["1.1"],
    printedFrom: "3.0 mm",
    printedTo: "30.0 mm",
    printedPositions: ["PA", "PB"],
  };
  return {
    type: "attachment",
    detail: "ml",
    positions: ["PB"],
    thicknesses: ["25.0 mm", "12.0 mm"],
    throat: "8 mm",
    parts: [{ group: "1.1", grade: "S235JR" }],
    processes: ["135"],
    ...joint,
    procedure: {
      $: "WPS-18 revision 1",
      types: ["attachment"],
      positions: ["PB"],
      groups: ["1.1"],
      details: ["sl", "ml"],
      throatFrom: "3 mm",
      throatTo: "10 mm",
      qualifications: [
        { $: "WPQR-16", ...test, detail: "ml", ...own },
        { $: "WPQR-17", ...test, detail: "sl", printedThroatFrom: "3.0 mm", printedThroatTo: "6.0 mm", ...own },
      ],
    },
  };
}

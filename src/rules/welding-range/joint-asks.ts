import { list, optional, quantity, text, things, type Inputs, type Thing, type Values } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { fromPiece, piece, rangeFrom, rangeTables, type FromPiece } from "./pieces.ts";
import { beyond, namesOf, oneName, saidRange, spanOf, spread, type Match, type Range } from "./range.ts";

/** What one joint asks of a qualification, all at once. */
export const need = {
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
export type Need = Values<typeof need>;

export const qualification = {
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
export type Qualification = Thing<typeof qualification>;

/** The same of its procedure, so that what is doubted there is not found again here. */
export const procedure = {
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
export type Procedure = Thing<typeof procedure>;

const within: Match = (held, asked) => asked === held || asked.startsWith(`${held}.`);
const same: Match = (held, asked) => held === asked;

/** What one weld asks and a repair of it may not: it is laid in its own groove, wherever the place then lies. */
export const ofGroove: readonly string[] = ["weld detail", "position"];

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
export function uncovered(
  one: Qualification,
  joint: Need,
  specified: Procedure,
  tables: Values<typeof rangeTables>,
  leaving: readonly string[] = [],
): readonly string[] {
  const problems = asks
    .filter(({ title }) => !leaving.includes(title))
    .flatMap(({ title, match = same, asked, printed, way, specified: inProcedure }) => {
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

/** What of a joint lies outside of what a procedure is for, each as the joint and the procedure say it. */
export const outside = (joint: Need, specified: Procedure, leaving: readonly string[]): readonly string[] =>
  asks
    .filter(({ title }) => !leaving.includes(title))
    .flatMap(({ title, match = same, asked, specified: inProcedure }) => {
      const [wanted, plan] = [asked(joint), inProcedure?.(specified)];
      return wanted === undefined || plan === undefined || beyond([plan], wanted, match) === undefined
        ? []
        : [`${title} ${saidRange(wanted)}, not ${saidRange(plan)}`];
    });

const isStronger = (own: Measure | undefined, tested: Measure | undefined): boolean =>
  own !== undefined && tested !== undefined && own.value > tested.value;

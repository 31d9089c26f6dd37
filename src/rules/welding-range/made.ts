import { fromMemory } from "../../model/basis.ts";
import type { Inputs } from "../../model/input.ts";
import type { Rule } from "../../model/rule.ts";
import { piece, rangeTables, type FromPiece, type Piece, type RangeTables } from "./pieces.ts";
import { saidRange, type Match, type Range } from "./range.ts";
import { ofSide, placeOf, type Side } from "./side.ts";
import type { Variable } from "./variable.ts";

export const standard = fromMemory(
  "EN ISO 15614-1",
  undefined,
  "ranges of qualification, level 2; each table says its editions",
);
export const shared = { severity: "nonconformity", owner: "welding coordination" } as const;
export const same: Match = (held, asked) => held === asked;

/** Inputs of a test piece that one variable needs, and the tables it asks. */
export const pieceInputs = ({ needs }: FromPiece): Inputs =>
  Object.fromEntries(needs.map((need) => [need, piece[need]] as const));
export const tableInputs = ({ tables }: FromPiece): Inputs =>
  Object.fromEntries(tables.map((name) => [name, rangeTables[name]] as const));

/** Values of a rule as what they were bound from: its inputs are put together from those of the sides. */
export type Got = Readonly<Record<string, unknown>>;
export const asPiece = (values: Got) => values as unknown as Piece;
export const asTables = (values: Got) => values as unknown as RangeTables;
export type Row = Got & { readonly $: { readonly name: string } };

export const printedOf = (values: Got, side: Side | undefined) => side?.read(ofSide("printed", values, side));
/** Which input an objection points at. */
export const placeFor = (prefix: string, side: Side, end: string | undefined) =>
  placeOf(prefix, end !== undefined && side.places.includes(end) ? end : (side.places[0] ?? ""));
export const given = (prefix: string, side: Side, range: readonly string[]) =>
  Object.fromEntries(Object.entries(side.give(range)).map(([name, one]) => [placeOf(prefix, name), one]));
export const outsideOf = (range: Range, names: readonly string[]) =>
  names.length > 0 ? names.join(", ") : saidRange(range);

export type Examples = NonNullable<Variable["examples"]>;
export const trimmed = (all: Got | undefined, inputs: Inputs) =>
  Object.fromEntries(Object.entries(all ?? {}).filter(([name]) => name in inputs));

export function madeExamples(
  examples: Examples | undefined,
  give: (range: readonly string[], example: Examples) => Got,
  objections: (example: Examples) => readonly string[],
): Rule["examples"] {
  if (examples === undefined) return [];
  return [
    { name: "inside", given: give(examples.inside, examples), objections: [] },
    { name: "outside", given: give(examples.outside, examples), objections: objections(examples) },
  ];
}

/** A range an example prints, as messages say it. */
export const saidHeld = (side: Side, held: readonly string[]) =>
  ["names", "name", "flag"].some((one) => side.places.includes(one))
    ? held.join(", ")
    : side.places.includes("to")
      ? side.places.includes("from")
        ? held.length > 1
          ? held.join(" to ")
          : `from ${held.join("")}`
        : `up to ${held.join("")}`
      : `from ${held.join("")}`;

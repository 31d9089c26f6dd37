import {
  anyOf,
  flag,
  list,
  optional,
  quantity,
  table,
  text,
  type Inputs,
  type Thing,
  type Values,
} from "../../model/input.ts";
import { gasesIn } from "./gases.ts";
import { namesOf, oneName, open, spanOf, type Range } from "./range.ts";

/** The standard whose tables recompute a range; those of EN ISO 15614-8 are not at hand. */
export const recomputed: readonly string[] = ["EN ISO 15614-1", "ISO 15614-1"];

/** What the tables say a test piece covers. */
export const rangeTables = {
  groupRange: table("procedure-group-range"),
  thicknessRange: table("procedure-thickness-range"),
  throatRange: table("procedure-throat-range"),
  diameterRange: table("procedure-diameter-range"),
  plateOnPipe: table("procedure-plate-on-pipe"),
  jointRange: table("procedure-joint-range"),
  detailRange: table("procedure-detail-range"),
  positionRange: table("procedure-position-range"),
  transferRange: table("procedure-transfer-range"),
  heatRange: table("procedure-heat-input-range"),
  yields: table("grade-yield"),
};
export type RangeTables = Values<typeof rangeTables>;

/** Everything a range may follow from; a variable looks only at what it needs. */
export const piece = {
  standard: text("standard.standard"),
  edition: text("standard.edition"),
  processes: list(text("processes[]")),
  mechanisation: optional(text("mechanisation")),
  jointType: text("jointType"),
  product: text("product"),
  materialGroup: text("materialGroup"),
  grade: text("grade"),
  thickness: quantity("testThickness", "mm"),
  layers: optional(text("layers")),
  throat: optional(quantity("throat", "mm")),
  diameter: optional(quantity("testDiameter", "mm")),
  positions: list(text("positions[]")),
  detail: text("detail"),
  transferModes: anyOf(list(text("transferModes[]"))),
  fillers: list(text("fillers[]")),
  gas: optional(text("shieldingGas")),
  current: optional(text("current")),
  heatInput: optional(quantity("heatInput", "kJ/mm")),
  preheat: quantity("preheat", "°C"),
  interpass: quantity("interpass", "°C"),
  heatTreated: flag("postWeldHeatTreatment"),
  impact: flag("impactTested"),
  hardness: flag("hardnessTested"),
  printedPositions: anyOf(list(text("range.positions[]"))),
} satisfies Inputs;
export type Piece = Thing<typeof piece>;

type Need = keyof typeof piece;
type TableName = keyof typeof rangeTables;

/** How a range follows from a test piece: undefined where the record does not state what it follows from. */
export interface FromPiece {
  readonly needs: readonly Need[];
  readonly tables: readonly TableName[];
  range(piece: Piece, tables: RangeTables): Range | undefined;
  /** What a test to another standard covers, whose tables are not at hand: what was tested, if anything. */
  otherwise?(piece: Piece): Range | undefined;
}

const from = (
  needs: readonly Need[],
  tables: readonly TableName[],
  range: FromPiece["range"],
  otherwise?: FromPiece["otherwise"],
): FromPiece => ({ needs, tables, range, ...(otherwise !== undefined && { otherwise }) });
/** As tested, by any standard. */
const same = (needs: readonly Need[], range: (piece: Piece) => Range | undefined): FromPiece =>
  from(needs, [], range, range);

/** What a test covers of a variable, by the tables of its standard or, of another, as tested. */
export const rangeFrom = (way: FromPiece, test: Piece, tables: RangeTables): Range | undefined =>
  recomputed.includes(test.standard) ? way.range(test, tables) : way.otherwise?.(test);

const fillets: readonly string[] = ["fillet"];
export const isFillet = ({ jointType }: Pick<Piece, "jointType">): boolean => fillets.includes(jointType);

/** Single or multi-run, where the record or its weld detail says it. */
export const layersOf = ({ layers, detail }: Pick<Piece, "layers" | "detail">): "single" | "multi" | undefined =>
  layers === "single" || detail === "sl" ? "single" : layers === "multi" || detail === "ml" ? "multi" : undefined;

export const fromPiece = {
  process: same(["processes"], ({ processes }) => namesOf(processes)),
  mechanisation: same(["mechanisation"], ({ mechanisation }) => oneName(mechanisation)),
  group: from(["edition", "materialGroup"], ["groupRange"], ({ edition, materialGroup }, { groupRange }) =>
    namesOf(groupRange(edition, materialGroup).texts("covers")),
  ),
  joint: from(["edition", "jointType"], ["jointRange"], ({ edition, jointType }, { jointRange }) =>
    namesOf(jointRange(edition, jointType).texts("covers")),
  ),
  thickness: from(
    ["edition", "jointType", "layers", "detail", "thickness"],
    ["thicknessRange"],
    (test, { thicknessRange }) => {
      const weld = isFillet(test) ? "fillet" : "butt";
      const row = thicknessRange(test.edition, weld, layersOf(test) ?? "multi", test.thickness);
      return spanOf(row.quantity("from"), row.quantity("to"));
    },
  ),
  throat: from(["edition", "jointType", "layers", "detail", "throat"], ["throatRange"], (test, { throatRange }) => {
    const layers = layersOf(test);
    if (layers !== "single" || !isFillet(test)) return open;
    if (test.throat === undefined) return undefined;
    const row = throatRange(test.edition, layers, test.throat);
    return spanOf(row.quantity("from"), row.quantity("to")) ?? open;
  }),
  diameter: from(
    ["edition", "product", "diameter", "positions", "printedPositions"],
    ["diameterRange", "plateOnPipe"],
    ({ edition, product, diameter, printedPositions, positions }, { diameterRange, plateOnPipe }) => {
      if (product === "pipe") {
        if (diameter === undefined) return undefined;
        const row = diameterRange(edition, diameter);
        return spanOf(row.quantity("from"), row.quantity("to"));
      }
      const held = printedPositions.length === 0 ? positions : printedPositions;
      const least = held.flatMap((position) => plateOnPipe(edition, position).quantity("from") ?? []);
      return spanOf([...least].sort((a, b) => b.low - a.low)[0], undefined);
    },
  ),
  position: from(
    ["edition", "positions", "impact", "hardness"],
    ["positionRange"],
    ({ edition, positions, impact, hardness }, { positionRange: range }) => {
      const column = impact || hardness ? "tested" : "covers";
      return namesOf([...new Set(positions.flatMap((one) => range(edition, one).texts(column)))]);
    },
  ),
  detail: from(
    ["edition", "detail"],
    ["detailRange"],
    ({ edition, detail }, { detailRange }) => namesOf(detailRange(edition, detail).texts("covers")),
    ({ detail }) => oneName(detail),
  ),
  transfer: from(
    ["edition", "transferModes"],
    ["transferRange"],
    ({ edition, transferModes }, { transferRange }) =>
      namesOf([...new Set(transferModes.flatMap((mode) => transferRange(edition, mode).texts("covers")))]),
    ({ transferModes }) => namesOf(transferModes),
  ),
  filler: same(["fillers"], ({ fillers }) => namesOf(fillers)),
  gas: same(["gas"], ({ gas }) => namesOf(gas === undefined ? [] : gasesIn(gas))),
  current: same(["current"], ({ current }) => oneName(current)),
  heatInput: from(
    ["edition", "heatInput", "impact", "hardness"],
    ["heatRange"],
    ({ edition, heatInput, impact, hardness }, { heatRange }) => {
      if (!impact && !hardness) return open;
      if (heatInput === undefined) return undefined;
      const row = heatRange(edition, heatInput);
      return spanOf(hardness ? row.quantity("from") : undefined, impact ? row.quantity("to") : undefined);
    },
  ),
  preheat: same(["preheat"], ({ preheat }) => spanOf(preheat, undefined)),
  interpass: same(["interpass"], ({ interpass }) => spanOf(undefined, interpass)),
  heatTreatment: same(["heatTreated"], ({ heatTreated }) => oneName(heatTreated ? "applied" : "not applied")),
} satisfies Readonly<Record<string, FromPiece>>;

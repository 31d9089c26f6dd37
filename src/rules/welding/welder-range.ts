import { flag, list, optional, quantity, table, text, type Values } from "../../model/input.ts";
import { atLeast, atMost, type Measure } from "../../model/quantity.ts";

/** What a test piece stood for; a range that is not printed on the certificate is undefined or empty. */
export interface WelderTest {
  readonly standard: string;
  readonly process: string;
  readonly product: string;
  readonly weldType: string;
  readonly fillerGroup: string | undefined;
  readonly thickness: Measure;
  readonly outsideDiameter: Measure | undefined;
  readonly positions: readonly string[];
  readonly detail: string;
  readonly supplementaryFillet: boolean | undefined;
  /** Symbol of the filler, and transfer modes of gas metal arc processes, where the certificate states them. */
  readonly fillerType?: string | undefined;
  readonly transferModes?: readonly string[];
  readonly printedProducts?: readonly string[];
  readonly printedGroups?: readonly string[];
  readonly printedDetails?: readonly string[];
  readonly printedPositions: readonly string[];
  readonly printedFrom: Measure | undefined;
  readonly printedTo: Measure | undefined;
}

/** What a certificate says of its test piece, by which its range is reckoned. */
export const testPiece = {
  process: text("process"),
  product: text("product"),
  weldType: text("weldType"),
  fillerGroup: optional(text("fillerGroup")),
  thickness: quantity("thickness", "mm"),
  outsideDiameter: optional(quantity("outsideDiameter", "mm")),
  positions: list(text("positions[]")),
  detail: text("detail"),
  supplementaryFillet: optional(flag("supplementaryFillet")),
};

/** What one welder did at one joint in one position. */
export interface WeldMade {
  readonly process: string;
  readonly weldType: "butt" | "fillet";
  readonly diameter: Measure | undefined;
  /** Deposited thickness of a butt weld, thickness of each part of a fillet weld. */
  readonly thicknesses: readonly Measure[];
  /** The thickness is the joint's, not the welder's: he laid at most that, so only the upper end of a range is judged by it. */
  readonly asStated?: boolean;
  readonly position: string;
  /** Undefined for runs laid on other runs: every test covers those. */
  readonly detail: string | undefined;
  readonly fillerGroups: readonly string[];
  /** Symbols of the fillers that were used, as far as they are known. */
  readonly fillerTypes?: readonly string[];
  /** Transfer modes that the procedure names for it. */
  readonly transferModes?: readonly string[];
}

/** What tests cover, as the tables of the standard say. */
export const welderRanges = {
  processRange: table("welder-process-range"),
  fillerRange: table("welder-filler-range"),
  positionRange: table("welder-position-range"),
  positionPair: table("welder-position-pair"),
  positionPasses: table("welder-position-passes"),
  detailRange: table("welder-detail-range"),
  thicknessRange: table("welder-thickness-range"),
  diameterRange: table("welder-diameter-range"),
  plateOnPipe: table("welder-plate-on-pipe"),
  fillerTypeRange: table("welder-filler-type-range"),
  transferRange: table("welder-transfer-range"),
};
export type WelderRanges = Values<typeof welderRanges>;

/** The tables tell fillet welds from all others. */
const sort = ({ weldType }: Pick<WelderTest, "weldType">) => (weldType === "fillet" ? "fillet" : "butt");

/** Least and greatest thickness that a test covers; no greatest: any. */
export function thicknessRange(
  test: Pick<WelderTest, "weldType" | "process" | "thickness">,
  { thicknessRange: range }: Pick<WelderRanges, "thicknessRange">,
): readonly [low: Measure | undefined, high: Measure | undefined] {
  const row = range(sort(test), test.process, test.thickness);
  return [row.quantity("from"), row.quantity("to")];
}

/** Positions a test covers. */
export function positionRange(
  test: Pick<WelderTest, "weldType" | "product" | "positions">,
  ranges: Pick<WelderRanges, "positionRange" | "positionPair">,
): readonly string[] {
  const { weldType, product, positions } = test;
  const covered = new Set(positions.flatMap((one) => ranges.positionRange(sort(test), one).texts("covers")));
  if (weldType === "butt" && product === "pipe" && positions.includes("PC"))
    for (const other of positions) for (const one of ranges.positionPair(other).texts("covers")) covered.add(one);
  return [...covered];
}

/** Operators of mechanised welding are tested for the process and the machine, not for sizes and positions. */
const isOperator = ({ standard }: WelderTest): boolean => standard.includes("14732");

/** A fillet weld made beside a butt weld test covers single runs in the easy positions. */
function asTested(test: WelderTest, weld: WeldMade): WelderTest {
  if (test.supplementaryFillet !== true || test.weldType !== "butt" || weld.weldType !== "fillet") return test;
  return { ...test, weldType: "fillet", positions: ["PB"], detail: "sl" };
}

/** What of a weld a welder's test does not cover, each as the range held; empty: all is covered. */
export function uncovered(given: WelderTest, weld: WeldMade, ranges: WelderRanges): readonly string[] {
  const test = asTested(given, weld);
  const covered = ranges.processRange(test.process).texts("covers");
  if (!covered.includes(weld.process)) return [`process ${covered.join(", ")}`];
  if (isOperator(test)) return [];
  if (test.weldType !== weld.weldType) return [`${test.weldType} welds`];
  const problems: string[] = [];
  const [low, high] = thicknessRange(test, ranges);
  const inside = (thickness: Measure, from: Measure | undefined, to: Measure | undefined) =>
    (weld.asStated === true || isAtLeast(thickness, from)) && isAtMost(thickness, to);
  const from = test.printedFrom ?? low;
  const to = test.printedTo ?? high;
  if (!weld.thicknesses.every((one) => inside(one, low, high) && inside(one, from, to)))
    problems.push(`thickness ${said(from)} to ${said(to)}`);
  const positions = positionRange(test, ranges);
  const printed = test.printedPositions;
  const held = printed.length === 0 ? positions : positions.filter((one) => printed.includes(one));
  const asked = held.includes(weld.position) ? [weld.position] : ranges.positionPasses(weld.position).texts("passes");
  if (!asked.every((one) => held.includes(one))) problems.push(`positions ${held.join(", ")}`);
  if (!coversProduct(test, weld, ranges)) problems.push(productOf(test));
  const details = ranges.detailRange(test.detail).texts("covers");
  const heldDetails = narrowed(details, test.printedDetails);
  if (weld.detail !== undefined && !heldDetails.includes(weld.detail))
    problems.push(`details ${heldDetails.join(", ")}`);
  const product = weld.diameter === undefined ? "plate" : "pipe";
  const products = test.printedProducts ?? [];
  if (products.length > 0 && !products.includes(product)) problems.push(`${products.join(", ")} as printed`);
  problems.push(...fillerProblems(test, weld, ranges));
  if (test.fillerGroup === undefined) return problems;
  const groups = narrowed(ranges.fillerRange(test.fillerGroup).texts("covers"), test.printedGroups);
  if (!weld.fillerGroups.every((group) => groups.includes(group)))
    problems.push(groups.length === 0 ? "no filler" : `fillers ${groups.join(", ")}`);
  return problems;
}

/** What a test covers, and the certificate prints; where it prints nothing, what the test covers. */
const narrowed = (covered: readonly string[], printed: readonly string[] = []): readonly string[] =>
  printed.length === 0 ? covered : covered.filter((one) => printed.includes(one));

/** Kind of filler and transfer mode that a test does not cover: a short arc is an art of its own. */
function fillerProblems(test: WelderTest, weld: WeldMade, ranges: WelderRanges): readonly string[] {
  const types = test.fillerType === undefined ? [] : ranges.fillerTypeRange(test.fillerType).texts("covers");
  const other = (weld.fillerTypes ?? []).some((one) => !types.includes(one));
  const tested = test.transferModes ?? [];
  const modes = [...new Set(tested.flatMap((mode) => ranges.transferRange(mode).texts("covers")))];
  // Every mode covers all but the short arc, so a certificate that states none covers those.
  const short = (weld.transferModes ?? []).some(
    (mode) => !modes.includes(mode) && (tested.length > 0 || mode === "dip"),
  );
  return [
    ...(other ? [types.length === 0 ? "no stated kind of filler" : `filler kinds ${types.join(", ")}`] : []),
    ...(short ? [modes.length === 0 ? "no stated transfer mode" : `transfer modes ${modes.join(", ")}`] : []),
  ];
}

const isAtLeast = (value: Measure, low: Measure | undefined) => low === undefined || atLeast(value, low) === "yes";
const isAtMost = (value: Measure, high: Measure | undefined) => high === undefined || atMost(value, high) === "yes";
const said = (end: Measure | undefined) => end?.text ?? "any";

/**
 * Outside diameters of pipes that a test covers, in the easiest of some positions; undefined: of those positions a test of
 * plates says nothing.
 */
export function diametersCovered(
  { product, outsideDiameter }: Pick<WelderTest, "product" | "outsideDiameter">,
  positions: readonly string[],
  { diameterRange, plateOnPipe }: Pick<WelderRanges, "diameterRange" | "plateOnPipe">,
): { readonly from: Measure | undefined; readonly to: Measure | undefined } | undefined {
  if (product === "plate") {
    const least = positions
      .flatMap((position) => plateOnPipe(position).quantity("from") ?? [])
      .reduce<Measure | undefined>((low, one) => (low === undefined || !isAtLeast(one, low) ? one : low), undefined);
    return least === undefined ? undefined : { from: least, to: undefined };
  }
  if (outsideDiameter === undefined) return undefined;
  const row = diameterRange(outsideDiameter);
  return { from: row.quantity("from"), to: row.quantity("to") };
}

function coversProduct(
  { product, outsideDiameter: tested }: WelderTest,
  { diameter, position }: WeldMade,
  { diameterRange, plateOnPipe }: WelderRanges,
): boolean {
  if (product === "plate") return diameter === undefined || isAtLeast(diameter, plateOnPipe(position).quantity("from"));
  if (tested === undefined) return false;
  const row = diameterRange(tested);
  if (diameter === undefined) return row.text("plate") === "yes";
  return isAtLeast(diameter, row.quantity("from")) && isAtMost(diameter, row.quantity("to"));
}

const productOf = ({ product, outsideDiameter }: WelderTest) =>
  product === "plate" ? "plate" : `pipe tested at ${outsideDiameter?.text ?? "no stated diameter"}`;

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
  readonly printedPositions: readonly string[];
  readonly printedFrom: Measure | undefined;
  readonly printedTo: Measure | undefined;
}

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
}

type Ranges = ReadonlyMap<string, readonly string[]>;
const ranges = (rows: Readonly<Record<string, string>>): Ranges =>
  new Map(Object.entries(rows).map(([test, covered]) => [test, covered.split(", ")]));

// All ranges: EN ISO 9606-1, from memory. A process that is not listed covers itself.
const processes = ranges({
  "135": "135, 138",
  "138": "135, 138",
  "141": "141, 142, 143, 145",
  "143": "141, 142, 143, 145",
  "145": "141, 142, 143, 145",
});
const fillers = ranges({
  FM1: "FM1, FM2",
  FM2: "FM1, FM2",
  FM3: "FM1, FM2, FM3",
  FM4: "FM1, FM2, FM3, FM4",
  FM5: "FM5",
  FM6: "FM5, FM6",
});
const buttPositions = ranges({
  PA: "PA",
  PC: "PA, PC",
  PE: "PA, PC, PE",
  PF: "PA, PF",
  PG: "PG",
  PH: "PA, PE, PF, PH",
  PJ: "PA, PE, PG, PJ",
  "H-L045": "PA, PC, PE, PF, PH, H-L045",
  "J-L045": "PA, PC, PE, PG, PJ, J-L045",
});
const filletPositions = ranges({
  PA: "PA",
  PB: "PA, PB",
  PC: "PA, PB, PC",
  PD: "PA, PB, PC, PD, PE",
  PE: "PA, PB, PC, PD, PE",
  PF: "PA, PB, PF",
  PG: "PG",
  PH: "PA, PB, PC, PD, PE, PF, PH",
  PJ: "PA, PB, PD, PE, PG, PJ",
});
const details = ranges({
  "ss nb": "ss nb, ss mb, bs, ss gb, ss fb",
  "ss mb": "ss mb, bs",
  bs: "ss mb, bs",
  "ss gb": "ss mb, bs, ss gb",
  "ss fb": "ss mb, bs, ss fb",
  sl: "sl",
  ml: "sl, ml",
});
/** Round a fixed pipe a welder passes through these. */
const passes = ranges({ PH: "PA, PE, PF", PJ: "PA, PE, PG" });
const rotating = ["PA", "PB", "PC", "PD"];

/** Least and greatest thickness in mm that a test covers. */
export function thicknessRange({ weldType, thickness, process }: WelderTest): readonly [number, number] {
  const tested = thickness.value;
  if (weldType === "fillet") return tested < 3 ? [tested, Math.max(3, 2 * tested)] : [3, Number.POSITIVE_INFINITY];
  const growth = process === "311" ? 1.5 : 2;
  if (tested < 3) return [tested, Math.max(3, growth * tested)];
  return tested < 12 ? [3, growth * tested] : [3, Number.POSITIVE_INFINITY];
}

/** Positions a test covers. */
export function positionRange({ weldType, product, positions }: WelderTest): readonly string[] {
  const table = weldType === "fillet" ? filletPositions : buttPositions;
  const covered = new Set(positions.flatMap((position) => table.get(position) ?? []));
  if (weldType === "butt" && product === "pipe" && positions.includes("PC")) {
    if (positions.includes("PH")) covered.add("H-L045");
    if (positions.includes("PJ")) covered.add("J-L045");
  }
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
export function uncovered(given: WelderTest, weld: WeldMade): readonly string[] {
  const test = asTested(given, weld);
  const covered = processes.get(test.process) ?? [test.process];
  if (!covered.includes(weld.process)) return [`process ${covered.join(", ")}`];
  if (isOperator(test)) return [];
  if (test.weldType !== weld.weldType) return [`${test.weldType} welds`];
  const problems: string[] = [];
  const [low, high] = thicknessRange(test);
  const inside = (thickness: Measure, from: Measure | number, to: Measure | number) =>
    (weld.asStated === true || atLeast(thickness, from) === "yes") && atMost(thickness, to) === "yes";
  const from = test.printedFrom ?? low;
  const to = test.printedTo ?? high;
  if (!weld.thicknesses.every((one) => inside(one, low, high) && inside(one, from, to)))
    problems.push(`thickness ${said(from)} to ${said(to)}`);
  const positions = positionRange(test);
  const printed = test.printedPositions;
  const held = printed.length === 0 ? positions : positions.filter((one) => printed.includes(one));
  const asked = held.includes(weld.position) ? [weld.position] : (passes.get(weld.position) ?? [weld.position]);
  if (!asked.every((one) => held.includes(one))) problems.push(`positions ${held.join(", ")}`);
  if (!coversProduct(test, weld)) problems.push(productOf(test));
  if (weld.detail !== undefined && !(details.get(test.detail) ?? []).includes(weld.detail))
    problems.push(`details ${(details.get(test.detail) ?? []).join(", ")}`);
  const groups = fillers.get(test.fillerGroup ?? "") ?? [];
  if (test.fillerGroup !== undefined && !weld.fillerGroups.every((group) => groups.includes(group)))
    problems.push(groups.length === 0 ? "no filler" : `fillers ${groups.join(", ")}`);
  return problems;
}

const said = (value: Measure | number) =>
  typeof value === "number" ? (Number.isFinite(value) ? `${value} mm` : "any") : value.text;

function coversProduct(test: WelderTest, weld: WeldMade): boolean {
  const tested = test.outsideDiameter;
  if (weld.diameter === undefined)
    return test.product === "plate" || (tested !== undefined && atLeast(tested, 25) === "yes" && tested.low > 25);
  if (test.product === "plate")
    return (
      atLeast(weld.diameter, 500) === "yes" ||
      (atLeast(weld.diameter, 75) === "yes" && rotating.includes(weld.position))
    );
  if (tested === undefined) return false;
  const [low, high] =
    tested.high <= 25 ? [tested.value, 2 * tested.value] : [Math.max(25, tested.value / 2), Number.POSITIVE_INFINITY];
  return atLeast(weld.diameter, low) === "yes" && atMost(weld.diameter, high) === "yes";
}

const productOf = ({ product, outsideDiameter }: WelderTest) =>
  product === "plate" ? "plate" : `pipe tested at ${outsideDiameter?.text ?? "no stated diameter"}`;

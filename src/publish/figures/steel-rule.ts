import { scaleLinear } from "d3-scale";
import type { Done } from "../../model/book.ts";
import { figure } from "../outline/numbers.ts";
import type { Block } from "../blocks.ts";
import type { Drawing, Shape } from "./shapes.ts";

/** A value and the limits it is held against, in one unit. */
interface Level {
  readonly value: number;
  readonly label: string;
  readonly strong: boolean;
}

/** Beside a wall, lengths so many times as great would leave nothing of it to see. */
const farthest = 20;

/**
 * Required, adopted and measured on one steel rule: drawn when the acceptances of a calculation compare lengths in
 * millimetres. Nothing is drawn when there is nothing to compare.
 */
export function thicknessFigure(computed: Done, next: () => string): Block[] {
  const unitOf = (symbol: string) =>
    computed.calculation.inputs[symbol]?.unit ??
    computed.calculation.steps.find((step) => step.symbol === symbol)?.unit;
  const { adopted } = computed.calculation;
  const wall = adopted === undefined ? undefined : computed.inputs.get(adopted)?.value;
  const lengths = computed.accept.filter(
    ({ acceptance, left, right }) =>
      unitOf(acceptance.left) === "mm" && (wall === undefined || Math.max(left, right) <= farthest * wall),
  );
  if (lengths.length === 0) return [];
  const means = (symbol: string) =>
    computed.calculation.inputs[symbol]?.means ??
    computed.calculation.steps.find((step) => step.symbol === symbol)?.means ??
    symbol;
  const levels = new Map<string, Level>();
  for (const { acceptance, left, right } of lengths) {
    const required = `${acceptance.relation === ">=" || acceptance.relation === ">" ? "at least" : "at most"} ${figure(right, 5)}`;
    levels.set(`r${right.toFixed(6)}`, { value: right, label: required, strong: false });
    levels.set(`v${acceptance.left}`, {
      value: left,
      label: `${means(acceptance.left)} ${figure(left, 5)}`,
      strong: true,
    });
  }
  const list = [...levels.values()].sort((a, b) => a.value - b.value);
  const title = `${computed.calculation.title}: required and actual, in millimetres`;
  return [
    { type: "heading", level: 2, text: "Required, adopted, measured" },
    {
      type: "figure",
      number: next(),
      caption: [
        "Heavy strokes are values of the records, light ones what the calculation requires. Scale in millimetres.",
      ],
      figure: {
        title,
        description: list.map(({ label }) => `${label} mm`).join("; "),
        wide: rule(list, 900),
        narrow: rule(list, 350),
      },
    },
  ];
}

function rule(levels: readonly Level[], width: number): Drawing {
  const size = width > 500 ? 14 : 12;
  const margin = 20;
  const top = Math.max(...levels.map(({ value }) => value)) * 1.15;
  const scale = scaleLinear([0, top], [margin, width - margin]);
  const rows = levels.length;
  const axis = rows * (size + 10) + 18;
  const shapes: Shape[] = [{ type: "line", from: [margin, axis], to: [width - margin, axis], weight: 1 }];
  for (let millimetre = 0; millimetre <= top; millimetre++) {
    const major = millimetre % 5 === 0;
    shapes.push({
      type: "line",
      from: [scale(millimetre), axis],
      to: [scale(millimetre), axis + (major ? 10 : 6)],
      weight: 0.6,
    });
    if (major)
      shapes.push({
        type: "text",
        at: [scale(millimetre), axis + 12 + size],
        text: String(millimetre),
        size,
        anchor: "middle",
      });
  }
  levels.forEach(({ value, label, strong }, index) => {
    const x = scale(value);
    const y = (index + 1) * (size + 10) - 6;
    const flip = x > width * 0.55;
    shapes.push(
      {
        type: "line",
        from: [x, y - size * 0.4],
        to: [x, axis],
        weight: strong ? 3 : 0.6,
        ...(!strong && { broken: true }),
      },
      {
        type: "text",
        at: [flip ? x - 8 : x + 8, y],
        text: `${label} mm`,
        size,
        anchor: flip ? "end" : "start",
        strong,
      },
    );
  });
  return { width, height: axis + 12 + size + 8, shapes };
}

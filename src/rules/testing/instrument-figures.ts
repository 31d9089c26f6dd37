import { commonPractice, fromMemory } from "../../model/basis.ts";
import type { Basis } from "../../model/basis.ts";
import { optional, quantity, text, type Condition } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { ratioOf, sizeOf } from "../shared/sizes.ts";

/** Against what a figure is held: one of the record, or the greatest error that follows from class and range. */
interface Against {
  readonly path: string;
  readonly called: string;
}

const ofClass = "class";

interface Pair {
  readonly id: string;
  readonly title: string;
  readonly basis: Basis;
  readonly kind: string;
  readonly figure: Against;
  readonly against: Against | typeof ofClass;
  /** What the figure may be of the other, in times. */
  readonly least?: number;
  readonly most?: number;
}

const scale = commonPractice(
  "a scale is divided about as finely as the instrument is true, and read to parts of a division",
);
const spread = commonPractice(
  "an instrument repeats its readings within its greatest error, and no finer than it can be read",
);
const sure = commonPractice("a calibration is surer than the error it has to find");
const resolved = fromMemory(
  "JCGM 100",
  "2008",
  "uncertainty of a reading from its resolution: resolution over twice the root of three",
);

const division = { path: "division", called: "scale division" };
const resolution = { path: "resolution", called: "resolution" };
const repeatability = { path: "repeatability", called: "repeatability" };
const greatest = { path: "maximumError", called: "greatest error" };
const uncertainty = { path: "uncertainty", called: "uncertainty" };
const ofRecord = ({ path, called }: Against): Against => ({ path: `record.${path}`, called });

const pairs: readonly Pair[] = [
  {
    id: "instrument-resolution",
    title: "An instrument is read to a division or a part of it",
    basis: scale,
    kind: "instrument",
    figure: resolution,
    against: division,
    least: 0.1,
    most: 1,
  },
  {
    id: "instrument-division",
    title: "The scale of an instrument is divided as finely as its class asks",
    basis: scale,
    kind: "instrument",
    figure: division,
    against: ofClass,
    least: 0.2,
    most: 3,
  },
  {
    id: "instrument-repeatability-class",
    title: "An instrument repeats its readings within the error of class",
    basis: spread,
    kind: "instrument",
    figure: repeatability,
    against: ofClass,
    most: 1,
  },
  {
    id: "instrument-repeatability-error",
    title: "An instrument repeats its readings within its greatest error",
    basis: spread,
    kind: "instrument",
    figure: repeatability,
    against: greatest,
    most: 1,
  },
  {
    id: "instrument-repeatability-read",
    title: "The repeatability of an instrument can be read on it",
    basis: spread,
    kind: "instrument",
    figure: repeatability,
    against: resolution,
    least: 0.2,
    most: 5,
  },
  {
    id: "instrument-error-read",
    title: "The greatest error of an instrument can be read on it",
    basis: spread,
    kind: "instrument",
    figure: greatest,
    against: resolution,
    least: 0.5,
    most: 20,
  },
  {
    id: "calibration-sure-class",
    title: "A calibration is surer than the error of the class",
    basis: sure,
    kind: "instrument#calibrations",
    figure: uncertainty,
    against: ofClass,
    most: 0.5,
  },
  {
    id: "calibration-sure-error",
    title: "A calibration is surer than the greatest error of the instrument",
    basis: sure,
    kind: "instrument#calibrations",
    figure: uncertainty,
    against: ofRecord(greatest),
    most: 0.5,
  },
  {
    id: "calibration-resolved",
    title: "A calibration is no surer than the instrument can be read",
    basis: resolved,
    kind: "instrument#calibrations",
    figure: uncertainty,
    against: ofRecord(resolution),
    least: 0.28,
  },
  {
    id: "calibration-useful",
    title: "A calibration is about as sure as the instrument can be read",
    basis: commonPractice("an instrument is not read far finer than it is known"),
    kind: "instrument#calibrations",
    figure: uncertainty,
    against: ofRecord(resolution),
    most: 4,
  },
];

const errorOfClass = { path: "range.maximum", called: "error of class" };

/** Figures of an instrument hang together: one that is ten times out, or in another unit, stands out among the others. */
export const instrumentFigures: readonly Rule[] = pairs.map(
  ({ id, title, basis, kind, figure, against, least = 0, most = Number.POSITIVE_INFINITY }) => {
    const byClass = against === ofClass;
    const other = byClass
      ? { ...errorOfClass, path: kind === "instrument" ? errorOfClass.path : `record.${errorOfClass.path}` }
      : against;
    const classPath = kind === "instrument" ? "accuracyClass" : "record.accuracyClass";
    const lowest = other.path.replace("maximum", "minimum");
    const there = (path: string): Condition => ({ path, exists: true });
    // 25 bar at a class of 1 %: an error of 0.25 bar.
    const share = byClass ? 0.01 : 1;
    const exampleOf = (times: number) => ({
      figure: `${Number((times * 25 * share).toPrecision(6))} bar`,
      other: "25 bar",
      ...(byClass && { accuracyClass: "1 %", lowest: "0 bar" }),
    });
    const fair = Number.isFinite(most) ? most : least;
    return rule({
      id,
      title,
      basis,
      kind,
      when: [there(figure.path), there(other.path), ...(byClass ? [there(classPath)] : [])],
      severity: "query",
      owner: "quality",
      inputs: {
        figure: text(figure.path),
        other: text(other.path),
        accuracyClass: byClass ? quantity(classPath, "%") : optional(quantity(classPath, "%")),
        ...(byClass && { lowest: optional(text(lowest)) }),
      },
      *check(values, instrument) {
        const { figure: stated, other: beside, accuracyClass } = values;
        const low: unknown = values.lowest;
        const [one, two] = [sizeOf(stated), sizeOf(beside)];
        if (one === undefined || two === undefined) return;
        const begin = typeof low === "string" ? sizeOf(low) : undefined;
        const span = byClass && begin?.unit === two.unit ? { ...two, number: two.number - begin.number } : two;
        const size =
          byClass && accuracyClass !== undefined
            ? { ...span, number: (span.number * accuracyClass.value) / 100 }
            : span;
        const ratio = ratioOf(one, size);
        if (ratio !== undefined && ratio >= least * (1 - 1e-9) && ratio <= most * (1 + 1e-9)) return;
        const said = byClass ? `${Number(size.number.toPrecision(3))} ${size.unit}` : beside;
        yield {
          at: "figure",
          accuses: [],
          message: `the ${figure.called} of ${kind === "instrument" ? "instrument " : ""}${instrument.name} is ${stated}, ${ratio === undefined ? "of another sort than" : ratio < least ? "far below what goes with" : "far above what goes with"} its ${other.called}, ${said}`,
          why:
            ratio === undefined
              ? "the two cannot be compared"
              : `the one is ${Number(ratio.toPrecision(2))} of the other; ${least > 0 ? `from ${least} ` : ""}${Number.isFinite(most) ? `up to ${Number(most.toPrecision(2))}` : "on"} is usual`,
          hint: "compare both with the instrument and its calibration certificate; if both are so, answer this query with that",
          related: [{ at: "other", message: `${beside} here` }],
        };
      },
      examples: [
        { name: "as it may be", given: exampleOf(fair), objections: [] },
        ...(Number.isFinite(most)
          ? [
              {
                name: "far above",
                given: exampleOf(most * 1.2),
                objections: [
                  `the ${figure.called} of ${kind === "instrument" ? "instrument " : ""}X-01 is ${exampleOf(most * 1.2).figure}, far above what goes with its ${other.called}, ${byClass ? "0.25 bar" : "25 bar"}`,
                ],
              },
            ]
          : []),
        ...(least > 0
          ? [
              {
                name: "far below",
                given: exampleOf(least * 0.8),
                objections: [
                  `the ${figure.called} of ${kind === "instrument" ? "instrument " : ""}X-01 is ${exampleOf(least * 0.8).figure}, far below what goes with its ${other.called}, ${byClass ? "0.25 bar" : "25 bar"}`,
                ],
              },
            ]
          : []),
        {
          name: "of another sort",
          given: { ...exampleOf(1), figure: "3 mm" },
          objections: [
            `the ${figure.called} of ${kind === "instrument" ? "instrument " : ""}X-01 is 3 mm, of another sort than its ${other.called}, ${byClass ? "0.25 bar" : "25 bar"}`,
          ],
        },
      ],
    });
  },
);

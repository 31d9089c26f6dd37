import { fromMemory } from "../../model/basis.ts";
import { exists, list, optional, quantity, text, thing, type Thing } from "../../model/input.ts";
import { roundDown, roundUp } from "../../model/print-number.ts";
import type { Measure } from "../../model/quantity.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { asksFor } from "../../requirements/testing-conditions.ts";
import { isClosed, sayLength, spansOf, union } from "../../model/seam-lengths.ts";
import { owedBy } from "../../model/owes.ts";
import { recordId } from "../../model/subject.ts";

const row = {
  from: optional(quantity("from", "mm")),
  to: optional(quantity("to", "mm")),
  length: quantity("length", "mm"),
  retest: exists("repair"),
  // Read only: a rejection that is still open accuses it, and then nothing of this counts.
  result: text("result"),
};

interface Tested {
  /** Counting what has no stated place once only where it may be the same place. */
  readonly sure: number;
  /** Taking every length for another place. */
  readonly most: number;
}

/**
 * A rejected row counts once its repair is tested again, and the test of the repair adds nothing to it. Lengths of one
 * report without stated place are different places; those of two reports may be the same place.
 */
function testedLength(all: readonly Thing<typeof row>[], seam: Measure, closed: boolean): Tested {
  const rows = all.filter(({ result }) => result !== "");
  const placed = union(rows.flatMap((one) => spansOf(one, seam, closed) ?? []));
  const loose = new Map<string, number>();
  for (const one of rows)
    if (!one.retest && spansOf(one, seam, closed) === undefined) {
      const report = recordId(one.$.id);
      loose.set(report, (loose.get(report) ?? 0) + one.length.low);
    }
  const lengths = [...loose.values()];
  return { sure: placed + Math.max(0, ...lengths), most: placed + lengths.reduce((sum, one) => sum + one, 0) };
}

/** What is owed is printed rounded up, what was done rounded down: no shortfall is rounded away. */
const owedSize = (value: number) => String(roundUp(value, 1));
const doneSize = (value: number) => String(roundDown(value, 1));

/** The length of each joint that one method tested, against the extent its design asks for. */
function extentOf(id: string, title: string, method: string): Rule {
  return rule({
    id,
    title,
    basis: fromMemory("EN 13445-5", "2021", "extent of testing; the extent is the one the joint states"),
    kind: "joint",
    when: [asksFor(method)],
    severity: "nonconformity",
    owner: "testing",
    disputes: ["length"],
    inputs: {
      role: text("role"),
      length: quantity("length", "mm"),
      extent: quantity(`requiredTests[method="${method}"].extent`, "%"),
      owed: quantity(`requiredTests[method="${method}"].calculation(tested-length).Lt`, "mm"),
      rows: list(thing(`<ndt-report:rows[].joint>[record.method="${method}"]`, row)),
    },
    // A visual test is owed of every joint, whatever its design asks for.
    ...(method !== "VT" && { owes: [owedBy("testing", "testing-complete", "rows")] }),
    *check({ role, length, extent, owed, rows }, joint) {
      const { sure, most } = testedLength(rows, length, isClosed(role));
      const enough = (tested: number) => tested >= owed.value * (1 - 1e-9);
      if (enough(sure)) return;
      const tested = enough(most) ? sure : most;
      const percent = doneSize((100 * tested) / length.value);
      yield {
        at: "extent",
        message: `${method} of joint ${joint.name} covers ${doneSize(tested)} mm of ${length.text}, ${percent} %; ${extent.text} is owed`,
        why: `${extent.text} of ${length.text} is ${owedSize(owed.value)} mm; tested: ${rows.map((one) => `${one.$.name} ${sayLength(one)}`).join(", ")}; overlaps count once`,
        hint: enough(most)
          ? "state from where to where each report tested: lengths of two reports may be the same place"
          : "add the report of the rest, have it tested, or correct the length of the joint",
        unsure: enough(most),
        related: rows.map((one) => ({ at: one, message: `tested ${sayLength(one)}` })),
      };
    },
    examples: [
      {
        name: "the whole length",
        given: joint("100 %", [["R-01#C2", "3744 mm"]]),
        objections: [],
      },
      { name: "just a quarter", given: joint("25 %", [["R-01#C2", "936 mm"]]), objections: [] },
      {
        name: "a millimetre short",
        given: joint("25 %", [["R-01#C2", "935 mm"]]),
        objections: [`${method} of joint X-01 covers 935 mm of 3744 mm, 24.9 %; 25 % is owed`],
      },
      {
        name: "two films side by side",
        given: joint("10 %", [
          ["R-01#A", "200 mm", "0 mm", "200 mm"],
          ["R-01#B", "200 mm", "200 mm", "400 mm"],
        ]),
        objections: [],
      },
      {
        name: "two films that overlap",
        given: joint("10 %", [
          ["R-01#A", "200 mm", "0 mm", "200 mm"],
          ["R-01#B", "200 mm", "100 mm", "300 mm"],
        ]),
        objections: [`${method} of joint X-01 covers 300 mm of 3744 mm, 8 %; 10 % is owed`],
      },
      { name: "over the zero mark", given: joint("10 %", [["R-01#A", "400 mm", "3544 mm", "200 mm"]]), objections: [] },
      {
        name: "two reports that do not say where",
        given: joint("10 %", [
          ["R-01#A", "200 mm"],
          ["R-02#A", "200 mm"],
        ]),
        objections: [`${method} of joint X-01 covers 200 mm of 3744 mm, 5.3 %; 10 % is owed`],
      },
      {
        name: "two rows of one report that do not say where",
        given: joint("10 %", [
          ["R-01#A", "200 mm"],
          ["R-01#B", "200 mm"],
        ]),
        objections: [],
      },
    ],
  });
}

type Row = readonly [id: string, length: string, from?: string, to?: string];

function joint(extent: string, rows: readonly Row[]) {
  return {
    role: "circumferential",
    length: "3744 mm",
    extent,
    owed: `${(Number.parseFloat(extent) * 3744) / 100} mm`,
    rows: rows.map(([$, length, from, to]) => ({
      $,
      length,
      result: "accepted",
      ...(from !== undefined && { from }),
      ...(to !== undefined && { to }),
    })),
  };
}

export const visualExtent = extentOf("visual-extent", "A joint is visually tested over the length it asks for", "VT");
export const magneticExtent = extentOf(
  "magnetic-extent",
  "A joint is magnetic particle tested over the length it asks for",
  "MT",
);
export const penetrantExtent = extentOf(
  "penetrant-extent",
  "A joint is penetrant tested over the length it asks for",
  "PT",
);
export const radiographicExtent = extentOf(
  "radiographic-extent",
  "A joint is radiographed over the length it asks for",
  "RT",
);
export const ultrasonicExtent = extentOf(
  "ultrasonic-extent",
  "A joint is ultrasonically tested over the length it asks for",
  "UT",
);

import { commonPractice } from "../../model/basis.ts";
import { anyOf, optional, quantity, text, thing, things } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

// What floating point adds.
const guard = 1e-9;

/** Whether two printed figures can be of one value: each as exact as its last digit, or known as less than. */
const agree = (one: Measure, other: Measure) =>
  one.low - one.halfUnit < other.high + other.halfUnit - guard &&
  other.low - other.halfUnit < one.high + one.halfUnit - guard;

export const oneHeatOneAnalysis = rule({
  id: "one-heat-one-analysis",
  title: "Certificates of one heat of one mill state one ladle analysis",
  basis: commonPractice("a heat is analysed in the ladle: every certificate of it prints the same figures"),
  kind: "book",
  when: [{ path: "book.material-certificate.rows[].chemistry", exists: true }],
  severity: "query",
  owner: "purchasing",
  inputs: {
    rows: anyOf(
      things("book.material-certificate.rows[]", {
        heat: text("heat"),
        mill: thing("record.mill", {}),
        chemistry: anyOf(things("chemistry[]", { element: text("element"), value: optional(quantity("value", "%")) })),
      }),
    ),
  },
  *check({ rows }) {
    const first = new Map<string, (typeof rows)[number]>();
    for (const row of rows) {
      const key = `${row.mill.$.id} ${row.heat}`;
      const before = first.get(key);
      if (before === undefined) {
        first.set(key, row);
        continue;
      }
      const apart = row.chemistry.flatMap(({ element, value }) => {
        const other = before.chemistry.find((one) => one.element === element)?.value;
        return value === undefined || other === undefined || agree(value, other)
          ? []
          : [`${element} ${other.text} and ${value.text}`];
      });
      if (apart.length === 0) continue;
      yield {
        at: row,
        on: row,
        accuses: [
          [row, "heat"],
          [before, "heat"],
        ],
        name: "analysis",
        message: `heat ${row.heat} of ${row.mill.$.name} has two ladle analyses: ${apart.join("; ")}`,
        why: `${before.$.name}, and ${row.$.name}`,
        hint: "compare both certificates: correct the heat number or the figures; if they are printed so, ask the mill which of them is true",
        related: [{ at: before, message: "stated otherwise here" }],
      };
    }
  },
  examples: [
    { name: "two heats", given: { rows: [cast("A", "0.14 %"), cast("B", "0.15 %")] }, objections: [] },
    { name: "one heat, rounded", given: { rows: [cast("A", "0.14 %"), cast("A", "0.142 %")] }, objections: [] },
    {
      name: "one heat, two analyses",
      given: { rows: [cast("A", "0.14 %"), cast("A", "0.16 %")] },
      objections: ["heat A of M1 has two ladle analyses: C 0.14 % and 0.16 %"],
    },
  ],
});

function cast(heat: string, value: string) {
  return { $: `CRT#${heat}`, heat, mill: { $: "M1" }, chemistry: [{ element: "C", value }] };
}

import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { sizeOf } from "../shared/sizes.ts";

/** A tape is divided in millimetres, of which halves can be read. */
const [division, finest] = ["mm", 0.5];

export const readByTape = rule({
  id: "read-by-tape",
  title: "What was measured with a tape alone is stated no finer than a tape is read",
  basis: commonPractice("a steel tape is divided in millimetres, of which halves can be read"),
  kind: "dimension-check",
  when: [
    { path: "rows[].measured", exists: true },
    { path: "instruments[].type", exists: true },
  ],
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    measured: anyOf(list(text("rows[].measured[]"))),
    types: anyOf(list(text("instruments[].type"))),
    named: anyOf(list(text("instruments[]"))),
  },
  *check({ measured, types, named }, report) {
    // One whose kind nobody recorded may have read it.
    if (types.length < named.length || types.some((type) => type !== "tape")) return;
    const fine = measured.filter((value) => {
      const size = sizeOf(value);
      return size?.unit === division && Math.abs(size.number / finest - Math.round(size.number / finest)) > 1e-6;
    });
    if (fine.length === 0) return;
    yield {
      at: "named",
      accuses: [],
      message: `dimension check ${report.name} states ${fine.slice(0, 3).join(", ")}, and was made with a tape alone`,
      why: `a tape is read to ${finest} ${division}`,
      hint: "name the instrument they were read with, or have them measured with one that reads as finely",
    };
  },
  examples: [
    { name: "whole millimetres", given: { measured: ["1201 mm"], types: ["tape"], named: ["T-1"] }, objections: [] },
    { name: "half ones", given: { measured: ["1200.5 mm"], types: ["tape"], named: ["T-1"] }, objections: [] },
    {
      name: "a calliper beside it",
      given: { measured: ["8.1 mm"], types: ["tape", "calliper"], named: ["T-1", "C-1"] },
      objections: [],
    },
    {
      name: "a wall to a tenth",
      given: { measured: ["8.1 mm"], types: ["tape"], named: ["T-1"] },
      objections: ["dimension check X-01 states 8.1 mm, and was made with a tape alone"],
    },
  ],
});

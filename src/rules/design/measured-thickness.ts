import { commonPractice } from "../../model/basis.ts";
import { list, quantity } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Of what lies in the middle of all readings of the part: what is too thin is judged by what it must hold. */
const most = 1.5;

export const measuredAlike = rule({
  id: "measured-alike",
  title: "Thicknesses measured of one part are near each other",
  basis: commonPractice("no plate, tube or end is half as thick again in one place as in another"),
  kind: "part",
  when: [{ path: "measuredThickness", exists: true }],
  severity: "query",
  owner: "quality",
  inputs: { measured: list(quantity("measuredThickness[]", "mm")) },
  *check({ measured }, part) {
    const ordered = [...measured].sort((a, b) => a.value - b.value);
    const middle = ordered[Math.floor((ordered.length - 1) / 2)];
    if (middle === undefined) return;
    const out = measured.filter(({ value }) => value > middle.value * most);
    if (out.length > 0)
      yield {
        at: "measured",
        accuses: [],
        message: `part ${part.name} measures ${out.map(({ text }) => text).join(" and ")} in one place, and ${middle.text} in another`,
        why: `measured: ${measured.map(({ text }) => text).join(", ")}`,
        hint: "compare with the sheet of measurements; correct the figure, or answer this query with why the part is so",
      };
  },
  examples: [
    { name: "formed", given: { measured: ["7.3 mm", "8.0 mm"] }, objections: [] },
    { name: "worn thin in one place", given: { measured: ["3.5 mm", "12.5 mm", "12.6 mm"] }, objections: [] },
    {
      name: "ten times",
      given: { measured: ["81 mm", "8.0 mm"] },
      objections: ["part X-01 measures 81 mm in one place, and 8.0 mm in another"],
    },
  ],
});

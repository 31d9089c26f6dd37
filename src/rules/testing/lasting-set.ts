import { commonPractice } from "../../model/basis.ts";
import { optional, quantity, text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** mm of a circumference: what a steel tape tells, and what no reading of it explains. */
const [tapeTells, lasting] = [0.2, 1];

export const lastingSet = rule({
  id: "lasting-set",
  title: "A vessel keeps no lasting deformation from its pressure test",
  basis: commonPractice(
    "sizes are the same before and after the test; a steel tape tells 0.2 mm, and more than 1 mm is no reading of it",
  ),
  kind: "pressure-test",
  when: [{ path: "permanentSet", exists: true }],
  severity: "nonconformity",
  owner: "quality",
  inputs: { kept: quantity("permanentSet", "mm"), result: optional(text("result")) },
  *check({ kept, result }, test) {
    // A shell that has become colder is smaller, and no worse.
    const size = kept.value - kept.halfUnit;
    if (size <= tapeTells || result === "rejected") return;
    yield {
      at: "kept",
      unsure: size <= lasting,
      message: `the vessel kept a lasting deformation of ${kept.text} from pressure test ${test.name}`,
      why: "steel that yields at the test pressure was too thin, too soft or too hot",
      hint: "compare with the report; if it is so, find where it yielded and raise a nonconformity report",
    };
  },
  examples: [
    { name: "none", given: { kept: "0.0 mm", result: "accepted" }, objections: [] },
    { name: "as near as a tape reads", given: { kept: "0.2 mm" }, objections: [] },
    {
      name: "more",
      given: { kept: "1.4 mm" },
      objections: ["the vessel kept a lasting deformation of 1.4 mm from pressure test X-01"],
    },
    { name: "rejected for it", given: { kept: "8.0 mm", result: "rejected" }, objections: [] },
  ],
});

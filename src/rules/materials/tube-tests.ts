import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** How certificates name it: by what is shown, or by how. */
const tightness = /tight|leak|hydro|water pressure|eddy|electromagnetic|10893-1\b/i;

export const tubeTightness = rule({
  id: "tube-tightness",
  title: "Each tube for pressure purposes is tested for tightness",
  basis: fromMemory(
    "EN 10216-2, EN 10217-2",
    undefined,
    "leak tightness test of every tube, hydrostatic or electromagnetic",
  ),
  kind: "material-certificate#rows",
  when: [
    { path: "standard", equals: ["EN 10216-2", "EN 10217-2", "EN 10216-5", "EN 10217-5"] },
    { path: "form", equals: ["tube", "pipe"] },
    { path: "record.type", equals: ["3.1", "3.2"] },
  ],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: { standard: text("standard"), tests: anyOf(list(text("otherTests[].test"))) },
  *check({ standard, tests }, row) {
    if (tests.some((test) => tightness.test(test))) return;
    yield {
      at: "standard",
      accuses: [],
      message: `${row.name} states no test of tightness; ${standard} asks for one of every tube`,
      why: tests.length === 0 ? "no other tests are stated" : `stated: ${tests.join(", ")}`,
      hint: "enter the test of the certificate; where it is not printed, ask the mill for it",
    };
  },
  examples: [
    {
      name: "by eddy current",
      given: { standard: "EN 10216-2", tests: ["flattening", "eddy current"] },
      objections: [],
    },
    { name: "by water", given: { standard: "EN 10216-2", tests: ["hydrostatic test 70 bar"] }, objections: [] },
    {
      name: "not stated",
      given: { standard: "EN 10216-2", tests: ["flattening"] },
      objections: ["X-01 states no test of tightness; EN 10216-2 asks for one of every tube"],
    },
  ],
});

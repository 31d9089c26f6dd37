import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, quantity, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** mm; thinner plates yield no test piece worth the name. */
const least = 6;

/** Test pieces of a set. */
const pieces = 3;

export const impactTested = rule({
  id: "impact-tested",
  title: "Plates for pressure purposes of six millimetres or more are tested for impact, in sets of three",
  basis: fromMemory("EN 10028-1", undefined, "tests that are made of every plate for pressure purposes"),
  kind: "material-certificate#rows",
  when: [
    { path: "standard", equals: ["EN 10028-2", "EN 10028-3"] },
    { path: "form", equals: ["plate", "formed-end"] },
  ],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    thickness: quantity("thickness", "mm"),
    standard: text("standard"),
    tests: anyOf(things("impact[]", { name: text("test"), values: anyOf(list(quantity("values[]", "J"))) })),
  },
  *check({ tests }, row) {
    for (const test of tests)
      if (test.values.length > 0 && test.values.length < pieces)
        yield {
          at: [test, "values"],
          name: test.name,
          message: `impact test ${test.name} of ${row.name} has ${test.values.length === 1 ? "one value" : `${test.values.length} values`}; a set is three`,
          why: `values: ${test.values.map((value) => value.text).join(", ")}`,
          hint: "enter every value of the certificate; where one is not printed, ask the mill for it",
        };
  },
  *lacks({ thickness, standard, tests }) {
    if (tests.length === 0 && thickness.value >= least)
      yield { at: "subject", path: "impact", why: `${standard}, ${thickness.text}: impact energy is tested` };
  },
  lacksDue: "material-received",
  examples: [
    {
      name: "three values",
      given: { thickness: "8 mm", standard: "EN 10028-2", tests: [{ name: "1", values: ["60 J", "61 J", "62 J"] }] },
      objections: [],
    },
    {
      name: "two values",
      given: { thickness: "8 mm", standard: "EN 10028-2", tests: [{ name: "1", values: ["60 J", "61 J"] }] },
      objections: ["impact test 1 of X-01 has 2 values; a set is three"],
    },
    { name: "too thin", given: { thickness: "5 mm", standard: "EN 10028-2", tests: [] }, objections: [] },
    {
      name: "not tested",
      given: { thickness: "8 mm", standard: "EN 10028-2", tests: [] },
      objections: [],
      lacks: ["impact"],
    },
  ],
});

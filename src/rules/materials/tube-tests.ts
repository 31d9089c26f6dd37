import { fromMemory } from "../../model/basis.ts";
import { anyOf, optional, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** How certificates name it: by what it shows, by water under pressure, or by its standard. */
const tightness = /tight|leak|hydro|hydraulic|water pressure|pressure test|dicht|10893-1(?!\d)/i;
/** Of electrical methods only those that are said to show tightness: others look for flaws. */
const otherwise = /10893-(?!1(?!\d))\d/i;
const notMade = /not (carried out|made|performed|tested)|none|waived/i;

export const tubeTightness = rule({
  id: "tube-tightness",
  title: "Each tube for pressure purposes is tested for tightness",
  basis: fromMemory(
    "EN 10216-2 and -5, EN 10217-2 and -5",
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
  inputs: {
    standard: text("standard"),
    tests: anyOf(things("otherTests[]", { test: text("test"), requirement: optional(text("requirement")) })),
  },
  *check({ standard, tests }, row) {
    const said = tests.map(({ test, requirement = "" }) => `${test} ${requirement}`.trim());
    if (said.some((one) => tightness.test(one) && !otherwise.test(one) && !notMade.test(one))) return;
    yield {
      at: "standard",
      accuses: [],
      message: `${row.name} states no test of tightness; ${standard} asks for one of every tube`,
      why: tests.length === 0 ? "no other tests are stated" : `stated: ${said.join(", ")}`,
      hint: "enter the test of the certificate; where it is not printed, ask the mill for it",
    };
  },
  examples: [
    { name: "by eddy current", given: tube(["tightness, eddy current"]), objections: [] },
    { name: "by its standard", given: tube(["every tube", "EN ISO 10893-1"]), objections: [] },
    { name: "by water", given: tube(["hydraulic test 70 bar"]), objections: [] },
    {
      name: "not stated",
      given: tube(["flattening"]),
      objections: ["X-01 states no test of tightness; EN 10216-2 asks for one of every tube"],
    },
    {
      name: "for flaws",
      given: tube(["eddy current", "EN ISO 10893-2"]),
      objections: ["X-01 states no test of tightness; EN 10216-2 asks for one of every tube"],
    },
    {
      name: "not made",
      given: tube(["leak tightness", "not carried out, agreed"]),
      objections: ["X-01 states no test of tightness; EN 10216-2 asks for one of every tube"],
    },
  ],
});

function tube([test = "", requirement]: readonly string[]) {
  return { standard: "EN 10216-2", tests: [{ test, ...(requirement !== undefined && { requirement }) }] };
}

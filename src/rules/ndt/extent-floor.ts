import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, table, text, thing, things } from "../../model/input.ts";
import { atLeast, exactly } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const volumetric = ["RT", "UT"];
const surface = ["MT", "PT"];
/** Standards whose extents are at hand; of another the rule says nothing, and does not apply. */
const families = ["EN 12953", "EN 13445"] as const;
const known = families.flatMap((family) => [family, `${family}-3`, `${family}-5`]);
/** A joint that states no coefficient may be meant with any: the smallest and the greatest there are. */
const anyCoefficient = [exactly(0.7, "1"), exactly(1, "1")] as const;

export const extentFloor = rule({
  id: "extent-floor",
  title: "A joint is planned to be tested as much as its design standard asks for joints of its sort",
  basis: fromMemory(
    "EN 12953-5, EN 13445-5",
    undefined,
    "extent of testing by sort of joint and coefficient; crossings and places as the plan states them",
  ),
  kind: "joint",
  when: [
    { path: "pressureBearing", equals: true },
    { path: "book.equipment.designStandard.standard", equals: known },
  ],
  severity: "query",
  owner: "design",
  inputs: {
    standard: text("book.equipment.designStandard.standard"),
    role: text("role"),
    type: text("type"),
    coefficient: optional(quantity("weldCoefficient", "1")),
    tests: list(thing("requiredTests[]", { method: text("method"), extent: quantity("extent", "%") })),
    parts: anyOf(things("parts[]", { coefficient: optional(quantity("weldCoefficient", "1")) })),
    floors: table("testing-extent"),
  },
  *check({ standard, role, type, coefficient, tests, parts, floors }, joint) {
    const family = families.find((one) => standard.startsWith(one)) ?? standard;
    const rows = (coefficient === undefined ? anyCoefficient : [coefficient]).map((one) =>
      floors(family, role, type, one),
    );
    const planned = tests.map(({ method, extent }) => `${method} ${extent.text}`).join(", ");
    // What the coefficient of a part demands of its longitudinal joints is asked by another rule.
    if (role === "longitudinal" && parts.some((part) => part.coefficient !== undefined)) return;
    for (const [column, methods, called] of [
      ["volumetric", volumetric, "RT or UT"],
      ["surface", surface, "MT or PT"],
    ] as const) {
      const asked = rows.flatMap((row) => row.quantity(column) ?? []).filter(({ value }) => value > 0);
      const unmet = asked.filter(
        (floor) => !tests.some(({ method, extent }) => methods.includes(method) && atLeast(extent, floor) === "yes"),
      );
      const [floor] = unmet;
      if (floor === undefined) continue;
      const open = unmet.length < rows.length;
      yield {
        at: "tests",
        name: column,
        accuses: [],
        message: `joint ${joint.name} is planned with ${planned}; ${family} asks for ${called} over ${floor.text}${open ? " where its coefficient is high" : ""}`,
        why: `${role} ${type} joint, ${coefficient === undefined ? "no coefficient stated" : `coefficient ${coefficient.text}`}`,
        hint: open
          ? "state the weld coefficient of the joint"
          : "raise the extent of testing, or answer this query with the clause that allows less",
      };
    }
  },
  examples: [
    { name: "a shell seam of 0.85", given: planned("longitudinal", "butt", [["RT", "10 %"]], "0.85"), objections: [] },
    {
      name: "of 1.0",
      given: planned("longitudinal", "butt", [["RT", "10 %"]], "1.0"),
      objections: ["joint X-01 is planned with RT 10 %; EN 12953 asks for RT or UT over 100 %"],
    },
    {
      name: "an end with too little",
      given: planned("circumferential", "corner", [["UT", "10 %"]]),
      objections: ["joint X-01 is planned with UT 10 %; EN 12953 asks for RT or UT over 25 %"],
    },
    { name: "a branch", given: planned("nozzle", "branch", [["MT", "10 %"]]), objections: [] },
    {
      name: "a branch looked at only",
      given: planned("nozzle", "branch", [["VT", "100 %"]]),
      objections: ["joint X-01 is planned with VT 100 %; EN 12953 asks for MT or PT over 10 %"],
    },
    {
      name: "a seam whose coefficient nobody states",
      given: planned("circumferential", "butt", [["RT", "10 %"]]),
      objections: [
        "joint X-01 is planned with RT 10 %; EN 12953 asks for RT or UT over 25 % where its coefficient is high",
      ],
    },
    {
      name: "enough at any coefficient",
      given: planned("circumferential", "butt", [["RT", "25 %"]]),
      objections: [],
    },
    {
      name: "EN 13445, testing group 4",
      given: { ...planned("longitudinal", "butt", [["VT", "100 %"]], "0.7"), standard: "EN 13445-3" },
      objections: [],
      source: "EN 13445-5:2014+A1:2018, table of testing groups: group 4, coefficient 0.7, 0 %",
    },
    {
      name: "EN 13445, testing group 3b",
      given: { ...planned("longitudinal", "butt", [["RT", "9 %"]], "0.85"), standard: "EN 13445-3" },
      objections: ["joint X-01 is planned with RT 9 %; EN 13445 asks for RT or UT over 10 %"],
      source: "EN 13445-5:2014+A1:2018, table of testing groups: group 3b, coefficient 0.85, 10 %",
    },
    {
      name: "EN 13445, testing group 1",
      given: { ...planned("longitudinal", "butt", [["RT", "99 %"]], "1.0"), standard: "EN 13445-3" },
      objections: ["joint X-01 is planned with RT 99 %; EN 13445 asks for RT or UT over 100 %"],
      source: "EN 13445-5:2014+A1:2018, table of testing groups: group 1, coefficient 1, 100 %",
    },
  ],
});

function planned(role: string, type: string, tests: readonly (readonly [string, string])[], coefficient?: string) {
  return {
    standard: "EN 12953-3",
    role,
    type,
    ...(coefficient !== undefined && { coefficient }),
    tests: tests.map(([method, extent]) => ({ method, extent })),
  };
}

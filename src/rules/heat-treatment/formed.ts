import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import { rule } from "../../model/rule.ts";
import { pressureBearing } from "../../requirements/conditions.ts";

const basis = fromMemory(
  "EN 13445-4",
  undefined,
  "what is formed cold beyond 5 % is heat-treated afterwards, 50·e/Rm in a cylinder; dished ends lie beyond it",
);
const most = 5;
const charge = { type: text("type") };

export const formedEndTreated = rule({
  id: "formed-end-treated",
  title: "A formed end was heat-treated after forming, to the condition it is certified in",
  basis,
  kind: "part",
  when: [pressureBearing, { path: "material.form", equals: "formed-end" }],
  severity: "query",
  owner: "purchasing",
  inputs: {
    charges: list(thing("<heat-treatment:parts[]>", charge)),
    certified: anyOf(list(text("<piece-mark:part>.certificateRow.deliveryCondition"))),
  },
  owes: [owedBy("purchasing", "material-received", "charges")],
  *check({ charges, certified }, part) {
    const [first] = charges;
    const condition = certified.find((one) => /^\+?N/.test(one));
    if (first === undefined || condition === undefined || charges.some(({ type }) => type !== "stress relief")) return;
    yield {
      at: [first, "type"],
      // All that lay in one charge had it alike.
      on: first,
      accuses: [],
      message: `part ${part.name} is certified in condition ${condition}; after forming it was stress relieved only`,
      why: charges.map(({ $, type }) => `${$.name}: ${type}`).join("; "),
      hint: "add the charge in which it was normalised, or answer this query with the forming that made it needless",
    };
  },
  examples: [
    { name: "normalised", given: { charges: [{ type: "normalising" }], certified: ["+N"] }, objections: [] },
    {
      name: "stress relieved, and certified so",
      given: { charges: [{ type: "stress relief" }], certified: ["+SR"] },
      objections: [],
    },
    {
      name: "stress relieved, and certified as normalised",
      given: { charges: [{ $: "HT-01", type: "stress relief" }], certified: ["+N"] },
      objections: ["part X-01 is certified in condition +N; after forming it was stress relieved only"],
    },
  ],
});

/** Roles of parts that are rolled from plate. */
const rolled = ["shell-course", "furnace", "reversal-chamber", "access-tube", "nozzle-neck"];

export const rolledPartTreated = rule({
  id: "rolled-part-treated",
  title: "A part rolled from plate beyond what cold steel takes was heat-treated",
  basis,
  kind: "part",
  // A frame of a manhole may be cut as a ring as well.
  when: [
    pressureBearing,
    { path: "material.form", equals: "plate" },
    { path: "role", equals: rolled },
    { path: "outsideDiameter", exists: true },
  ],
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    thickness: quantity("nominalThickness", "mm"),
    diameter: optional(quantity("outsideDiameter", "mm")),
    charges: anyOf(things("<heat-treatment:parts[]>", charge)),
  },
  *check({ thickness, diameter, charges }, part) {
    if (diameter === undefined) return;
    const deformed = (100 * thickness.value) / (diameter.value - thickness.value);
    if (deformed <= most + 1e-9 || charges.length > 0) return;
    yield {
      at: "subject",
      accuses: [],
      message: `part ${part.name} of ${diameter.text} is rolled from ${thickness.text}, ${deformed.toFixed(1)} % of deformation, and no heat treatment names it`,
      why: `above ${most} % cold steel is heat-treated after forming`,
      hint: "add it to the charge it lay in, if the furnace record lists it; else have it treated, or its hot forming shown",
    };
  },
  examples: [
    { name: "a wide shell", given: { thickness: "12.0 mm", diameter: "1924 mm", charges: [] }, objections: [] },
    { name: "just five per cent", given: { thickness: "10 mm", diameter: "210 mm", charges: [] }, objections: [] },
    {
      name: "narrower",
      given: { thickness: "10 mm", diameter: "205 mm", charges: [] },
      objections: ["part X-01 of 205 mm is rolled from 10 mm, 5.1 % of deformation, and no heat treatment names it"],
    },
    {
      name: "narrower, and treated",
      given: { thickness: "10 mm", diameter: "205 mm", charges: [{ type: "normalising" }] },
      objections: [],
    },
  ],
});

import { ownChoice } from "../../model/basis.ts";
import { anyOf, list, optional, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** `EN 13445-3:2021, cylindrical shells` is of EN 13445; `EN 134451` is not. */
const isOf = (name: string, family: string) =>
  name.startsWith(family) && !/^[\p{L}\p{N}]/u.test(name.slice(family.length));
const listed = (text: string) => text.split(", ");

export const designStandardServed = rule({
  id: "design-standard-served",
  title: "A book is judged with a profile of the standard its equipment is designed to",
  basis: ownChoice(
    "limits of another family of standards refuse honest work, or accept what the design does not allow",
  ),
  kind: "equipment",
  severity: "query",
  owner: "design",
  inputs: { standard: text("designStandard.standard"), served: text("profile.designStandards") },
  *check({ standard, served }, equipment) {
    if (served === "any" || listed(served).some((family) => isOf(standard, family))) return;
    yield {
      at: "standard",
      accuses: [],
      message: `equipment ${equipment.name} is designed to ${standard}; the profile of this book is made for ${listed(served).join(" and ")}`,
      why: "the parameters in which design standards differ are those of another family",
      hint: "name the profile of the design standard, or the cautious one; or answer this query with the ground",
    };
  },
  examples: [
    { name: "of the family", given: { standard: "EN 12953", served: "EN 12953" }, objections: [] },
    { name: "a part of the family", given: { standard: "EN 13445-3", served: "EN 12953, EN 13445" }, objections: [] },
    { name: "any", given: { standard: "AD 2000", served: "any" }, objections: [] },
    {
      name: "of another family",
      given: { standard: "EN 13445", served: "EN 12953" },
      objections: ["equipment X-01 is designed to EN 13445; the profile of this book is made for EN 12953"],
    },
  ],
});

export const sheetStandardDeclared = rule({
  id: "sheet-standard-declared",
  title: "A sheet calculates by a standard that the design declares",
  basis: ownChoice("who designs to one standard and calculates by another says so, and for what"),
  kind: "calculation-sheet",
  when: [{ path: "adopts", exists: false }],
  severity: "query",
  owner: "design",
  inputs: {
    basis: text("basis"),
    known: text("profile.formulaStandards"),
    equipment: list(
      thing("book.equipment", {
        standard: text("designStandard.standard"),
        rules: anyOf(things("designRules[]", { standard: text("standard") })),
      }),
    ),
  },
  *check({ basis, known, equipment }, sheet) {
    const family = listed(known).find((one) => isOf(basis, one));
    const [first] = equipment;
    if (family === undefined || first === undefined) return;
    const declared = equipment.flatMap(({ standard, rules }) => [standard, ...rules.map((one) => one.standard)]);
    if (declared.some((one) => isOf(one, family))) return;
    yield {
      at: "basis",
      accuses: [],
      on: first,
      name: family,
      message: `sheets calculate by ${family}; equipment ${first.$.name} is designed to ${declared.join(" and ")}`,
      why: `the first is ${sheet.name}: ${basis}`,
      hint: "enter under the design rules of the equipment what is calculated by it, here and in the papers that name the standards; or calculate by the standard that is declared",
      related: [{ at: [first, "standard"], message: "declared here" }],
    };
  },
  examples: [
    { name: "the declared standard", given: sheetBy("EN 12953-3, calculation temperature"), objections: [] },
    { name: "a rule that is declared beside it", given: sheetBy("Indian Boiler Regulations 1950"), objections: [] },
    { name: "no standard of design", given: sheetBy("IAPWS R7-97"), objections: [] },
    {
      name: "another family",
      given: sheetBy("EN 13445-3"),
      objections: [
        "sheets calculate by EN 13445; equipment B-01 is designed to EN 12953 and Indian Boiler Regulations",
      ],
    },
  ],
});

function sheetBy(basis: string) {
  return {
    basis,
    known: "EN 12953, EN 13445, Indian Boiler Regulations",
    equipment: [{ $: "B-01", standard: "EN 12953", rules: [{ standard: "Indian Boiler Regulations" }] }],
  };
}

/** The year that stands right behind the name of a standard, its part and its clauses aside: `EN 13445-3:2021`. */
const yearBehind = (basis: string, standard: string): string | undefined =>
  /^(?:-\d+)*[:,]?\s?((?:19|20)\d\d)\b/u.exec(basis.slice(standard.length))?.[1];

export const sheetEditionDeclared = rule({
  id: "sheet-edition-declared",
  title: "A sheet calculates by the edition of the standard that the design declares",
  basis: ownChoice("editions differ: who calculates by one and declares another has said one of them wrongly"),
  kind: "calculation-sheet",
  when: [{ path: "adopts", exists: false }],
  severity: "query",
  owner: "design",
  inputs: {
    basis: text("basis"),
    equipment: list(
      thing("book.equipment", {
        standard: text("designStandard.standard"),
        edition: optional(text("designStandard.edition")),
        rules: anyOf(things("designRules[]", { standard: text("standard"), edition: optional(text("edition")) })),
      }),
    ),
  },
  *check({ basis, equipment }, sheet) {
    for (const one of equipment) {
      const declared = [one, ...one.rules].find(({ standard }) => isOf(basis, standard));
      if (declared?.edition === undefined) continue;
      const { standard, edition } = declared;
      const year = yearBehind(basis, standard);
      if (year === undefined || edition.includes(year)) continue;
      yield {
        at: "basis",
        accuses: ["basis"],
        message: `sheet ${sheet.name} calculates by ${standard}:${year}; equipment ${one.$.name} is designed to the edition of ${edition}`,
        why: `basis of the sheet: ${basis}`,
        hint: "compare with the sheet: correct the edition here or there, or calculate by the one that is declared",
        related: [{ at: declared, message: `${standard}, ${edition}` }],
      };
    }
  },
  examples: [
    {
      name: "the declared edition",
      given: editionOf("Indian Boiler Regulations 1950, regulation 500"),
      objections: [],
    },
    { name: "a sheet that names none", given: editionOf("EN 12953-3, calculation temperature"), objections: [] },
    {
      name: "an edition before",
      given: editionOf("EN 12953-3:2002, calculation temperature"),
      objections: ["sheet X-01 calculates by EN 12953:2002; equipment B-01 is designed to the edition of 2012"],
    },
  ],
});

function editionOf(basis: string) {
  return {
    basis,
    equipment: [
      {
        $: "B-01",
        standard: "EN 12953",
        edition: "2012",
        rules: [{ standard: "Indian Boiler Regulations", edition: "1950" }],
      },
    ],
  };
}

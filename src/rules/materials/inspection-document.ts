import { fromMemory, ownChoice } from "../../model/basis.ts";
import { anyOf, optional, quantity, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Standards that define types 2.1 to 3.2, and the first edition that names them so. */
const defining: readonly (readonly [number: string, since: number])[] = [
  ["10204", 2004],
  ["10474", 2013],
];

export const documentStandard = rule({
  id: "certificate-document-standard",
  title: "A certificate names the standard, and the edition, that its type of inspection document is of",
  basis: fromMemory("EN 10204", "2004", "types 2.1, 2.2, 3.1 and 3.2; editions before name 3.1.A, 3.1.B and 3.1.C"),
  kind: "material-certificate",
  severity: "query",
  owner: "purchasing",
  inputs: {
    type: text("type"),
    standard: text("documentStandard.standard"),
    edition: text("documentStandard.edition"),
  },
  *check({ type, standard, edition }, certificate) {
    const of = defining.find(([number]) => new RegExp(String.raw`(?<!\d)${number}(?!\d)`, "u").test(standard));
    const year = Number(/\b(?:19|20|21)\d\d\b/u.exec(edition)?.[0]);
    // An edition without a year is found by itself.
    if (of !== undefined && (Number.isNaN(year) || year >= of[1])) return;
    const wrong = of === undefined ? "standard" : "edition";
    yield {
      at: wrong,
      message: `certificate ${certificate.name} is of type ${type} to ${standard}:${edition}, which ${of === undefined ? "defines no types of inspection document" : `names no type ${type}`}`,
      why: "EN 10204 and ISO 10474 define them, the first so since 2004, the second since 2013",
      hint: "compare with the heading of the certificate; if it says so, ask its maker for one that can be judged",
    };
  },
  examples: [
    { name: "as usual", given: { type: "3.1", standard: "DIN EN 10204", edition: "2005-01" }, objections: [] },
    {
      name: "the edition before",
      given: { type: "3.1", standard: "EN 10204", edition: "1991" },
      objections: ["certificate X-01 is of type 3.1 to EN 10204:1991, which names no type 3.1"],
    },
    { name: "no year", given: { type: "3.1", standard: "EN 10204", edition: "latest" }, objections: [] },
    {
      name: "the standard of the steel",
      given: { type: "3.1", standard: "EN 10028-2", edition: "2017" },
      objections: ["certificate X-01 is of type 3.1 to EN 10028-2:2017, which defines no types of inspection document"],
    },
  ],
});

export const testUnitOfHeat = rule({
  id: "test-unit-of-one-heat",
  title: "Test pieces of one number on a certificate are of one heat and one thickness",
  basis: ownChoice("a test unit is one plate or one lot: what was taken from it is of one heat"),
  kind: "material-certificate",
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    rows: anyOf(
      things("rows[]", {
        heat: text("heat"),
        unit: optional(text("testUnit")),
        thickness: optional(quantity("thickness", "mm")),
      }),
    ),
  },
  when: [{ path: "rows[].testUnit", exists: true }],
  *check({ rows }, certificate) {
    const said = ({ heat, thickness }: (typeof rows)[number]) =>
      `heat ${heat}${thickness === undefined ? "" : `, ${thickness.text}`}`;
    for (const [index, row] of rows.entries()) {
      if (row.unit === undefined) continue;
      const before = rows
        .slice(0, index)
        .find(
          (one) => one.unit === row.unit && (one.heat !== row.heat || one.thickness?.value !== row.thickness?.value),
        );
      if (before === undefined) continue;
      yield {
        at: [row, "unit"],
        accuses: [
          [row, "unit"],
          [before, "unit"],
        ],
        name: row.$.id,
        message: `certificate ${certificate.name} gives test unit ${row.unit} for ${said(before)}, and for ${said(row)}`,
        why: "results of a test unit hold for the heat and the thickness it is of",
        hint: "compare both rows with the certificate and correct the wrong one",
        related: [{ at: [before, "unit"], message: "and here" }],
      };
    }
  },
  examples: [
    { name: "two sizes of product, two units", given: { rows: [unit("1", "A"), unit("2", "B")] }, objections: [] },
    { name: "two rows of one unit", given: { rows: [unit("1", "A"), unit("1", "A")] }, objections: [] },
    {
      name: "two heats",
      given: { rows: [unit("1", "A"), unit("1", "B")] },
      objections: ["certificate X-01 gives test unit 1 for heat A, 8 mm, and for heat B, 8 mm"],
    },
  ],
});

function unit(number: string, heat: string) {
  return { unit: number, heat, thickness: "8 mm" };
}

import type { Block, Cell, ChainLink, Text } from "../../src/publish/blocks.ts";
import type { Page } from "../../src/publish/publication.ts";
import { pressureFigure } from "./sample-figures.ts";
import { formulas, symbol } from "./sample-formulas.ts";
import { chemistry, weldLog, wideTable } from "./sample-tables.ts";

/** Everything a hostile or careless author might write where text is expected. */
export const hostile = `<script>alert("x")</script> & <img src=x onerror=alert(1)> "quoted" 'single' {{ 7*7 }} \${7*7} </title></svg>`;
export const longId = "PIECE-MARK-0123456789-ABCDEFGHIJKLMNOPQR.S-0123456789-ABCDEFGHIJKLMNOPQR";
const signs =
  "Greek αβγδε ΔΣΩ φ, ≥ ≤ ± × ÷ − √ ∞, 20 °C, mm², m³, Ø 1200, µm, ½, “quotes”, …, naïve Straße Łódź Ångström";

const link = (page: string, text: string, anchor?: string) =>
  ({ type: "link", to: anchor === undefined ? { page } : { page, anchor }, text }) as const;
const code = (text: string) => ({ type: "code", text }) as const;
const whole = (text: string) => ({ type: "whole", text }) as const;

function chainLink(what: string, mark: ChainLink["mark"], text: Text, rest: Partial<ChainLink> = {}): ChainLink {
  return { what, mark, text: [text], notes: [], ...rest };
}

export const jointPage: Page = {
  url: "joint/r-C2.html",
  number: "7.4",
  kindLine: "Joint",
  title: "C2, shell course 1 to shell course 2",
  under: [
    "Circumferential butt weld, 3745 mm long, 8 mm thick. One link of the chain has failed and one is not judged.",
  ],
  section: 1,
  blocks: [
    {
      type: "chain",
      label: "Evidence for joint C2",
      links: [
        chainLink(
          "Drawing and weld map",
          "passed",
          ["Shown on DR-02, revision B, in force since ", whole("2026-05-08"), "."],
          {
            notes: [{ lead: "Source", text: [code("joints/shell.json:58")] }],
          },
        ),
        chainLink("Parts and heats", "passed", [
          "Part 1, ",
          link("material-certificate/r-CRT-003.html", "heat 84713"),
          ".",
        ]),
        chainLink("Welder, on that day", "failed", [link("person/r-W07.html", "W07"), " welded all three layers."], {
          anchor: "welder",
          because: ["Finding: ", link("findings.html", "Welder W07 was not qualified on 2026-06-09", "f-w07"), "."],
          notes: [
            { text: ["valid to 2026-05-31, welded 2026-06-09: 9 days late"] },
            { lead: "Basis", text: ["EN ISO 9606-1, period of validity (from memory)"] },
          ],
        }),
        chainLink("Tester N2, on that day", "not judged", ["The yearly vision test is not in the book."], {
          because: ["Not judged because of: ", link("findings.html", "tester N2 has no vision test", "f-n2"), "."],
        }),
        chainLink(
          "Heat treatment",
          "not applicable",
          ["The plate is thinner than the thickness from which it is required."],
          {
            notes: [{ text: ["8.0 mm, required above 35 mm"] }],
          },
        ),
        chainLink("Pressure test", "not due", ["Due at milestone ", { type: "em", text: "pressure test" }, "."]),
      ],
      count: "Six links: 2 passed, 1 failed, 1 not judged, 1 not applicable, 1 not due.",
    },
    { type: "heading", level: 2, text: "Named by", anchor: "named-by" },
    {
      type: "list",
      ordered: false,
      items: [
        ["Weld log, ", link("weld-log/g-C.html", "lines of C2", "C2"), "."],
        [link("findings.html", "Two findings"), "."],
      ],
      notes: [{ text: ["Address of this page: ", code("joint/r-C2.html"), ". It stays the same in later issues."] }],
    },
  ],
};

export const calculationPage: Page = {
  url: "calculation/r-SHELL.html",
  number: "3.2",
  kindLine: "Calculation, shell courses 1 and 2",
  title: "Cylindrical shell under internal pressure",
  under: ["Required 5.89 mm, adopted 8.0 mm, smallest measured 7.9 mm."],
  section: 0,
  blocks: [
    { type: "heading", level: 2, number: "3.2.1", text: "Symbols" },
    {
      type: "table",
      number: "3.1",
      title: "Inputs, and where they come from",
      columns: [
        { head: "Symbol", align: "left", width: 1 },
        { head: "Value", align: "number", width: 1 },
        { head: "Unit", align: "left", width: 1 },
        { head: "Meaning", align: "left", width: 4 },
        { head: "Where it comes from", align: "left", width: 3 },
      ],
      wide: true,
      groups: [
        [
          { anchor: "P", cells: row("P", undefined, "1.1", "N/mm²", "calculation pressure, from PS = 11 bar") },
          { cells: row("D", "e", "1200", "mm", "outside diameter") },
          { cells: row("R", "p0.2/t", "253.0", "N/mm²", "proof strength at 60 °C, between 50 °C and 100 °C") },
          { cells: row("δ", "e", "0.3", "mm", "negative tolerance of the plate") },
          { cells: row("z", undefined, "0.85", "", "joint coefficient") },
        ],
      ],
    },
    { type: "heading", level: 2, number: "3.2.2", text: "Calculation" },
    {
      type: "calculation",
      steps: [
        {
          means: "Nominal design stress, at 60 °C.",
          formula: formulas.stress,
          substituted: formulas.stressValues,
          result: "168.666 667 N/mm²",
          governs: "the first governed; the other: 170.833 333",
          lines: [],
          notes: [{ lead: "Basis", text: ["EN 13445-3, nominal design stress (from memory)"] }],
        },
        {
          means: "Thickness needed against pressure.",
          formula: formulas.thickness,
          substituted: formulas.thicknessValues,
          result: "4.585 987 mm",
          rounded: "4.59 mm",
          lines: [],
          notes: [],
        },
        {
          means: "A root, a power and a long line that has to wrap on a narrow page.",
          formula: formulas.root,
          substituted: formulas.long,
          result: "1.609 916 N/mm²",
          rounded: "16.09 bar",
          lines: [],
          notes: [{ text: ["Required values are rounded up, allowed values down."] }],
        },
        {
          means: "Smallest thickness of 24 points, found by a named function.",
          result: "7.9 mm",
          lines: ["24 readings from 7.9 mm to 8.2 mm", "smallest at point S-14", hostile],
          notes: [],
        },
      ],
    },
    { type: "figure", number: "3.2", caption: ["Thickness of the shell."], figure: pressureFigure },
    { type: "heading", level: 2, number: "3.2.4", text: "Limits of validity" },
    {
      type: "judged",
      items: [
        {
          text: [
            "The shell is thin: ",
            { type: "symbol", display: symbol("e") },
            " is at most 0.16 × ",
            { type: "symbol", display: symbol("D", "e") },
            ".",
          ],
          mark: "passed",
        },
        { text: ["The temperature of 460 °C lies inside the table of strength, 20 °C to 400 °C."], mark: "failed" },
        {
          text: ["Out-of-roundness is at most 1.0 %."],
          mark: "not judged",
          because: [link("findings.html", "the measurement is missing", "f-n2")],
        },
        { text: ["Creep is to be considered above 370 °C."], mark: "not applicable" },
        { text: ["Compared with the sheet after release."], mark: "not due" },
      ],
      notes: [{ lead: "Basis", text: ["EN 13445-3 (from memory)"] }],
    },
    { type: "heading", level: 2, number: "3.2.5", text: "Caution" },
    {
      type: "caution",
      text: [
        ["This compares the recorded dimensions with one formula. Wind, lifting and fatigue are not judged."],
        ["It does not replace the calculation of a licensed person."],
      ],
    },
  ],
};

function row(base: string, sub: string | undefined, value: string, unit: string, means: string): readonly Cell[] {
  return [
    { type: "text", text: [{ type: "symbol", display: symbol(base, sub) }] },
    { type: "number", text: value },
    unit === "" ? { type: "empty" } : { type: "text", text: [unit] },
    { type: "text", text: [means] },
    { type: "text", text: [link("material-certificate/r-CRT-003.html", "certificate CRT-003")] },
  ];
}

export const certificatePage: Page = {
  url: "material-certificate/r-CRT-003.html",
  number: "6.2",
  kindLine: "Material certificate CRT-003",
  title: "Plate for the shell, P265GH, 8 mm",
  section: 2,
  blocks: [
    chemistry,
    {
      type: "scan",
      title: "Original CRT-003",
      path: "files/materials/crt-003.pdf",
      sha256: "b30d6f710c5e88a4b30d6f710c5e88a4b30d6f710c5e88a4b30d6f710c5e88a4",
      page: 1,
      pages: 2,
      compared: "Compared with the data by mark B4 on 2026-05-12.",
      anchor: "original",
    },
    { type: "heading", level: 3, text: "All heats together" },
    wideTable,
    {
      type: "paragraph",
      text: [
        "Used in ",
        link("joint/r-C2.html", "joint C2"),
        ", see ",
        { type: "file", path: "files/materials/crt-003.pdf", text: "the original" },
        ".",
      ],
      notes: [{ text: ["Plate 8.0 × 1500 × 6000 mm; area used 49.9 %."] }],
    },
  ],
};

export const weldLogPage: Page = {
  url: "weld-log/g-C.html",
  number: "7.3",
  title: "Weld log, joints C1 to C20",
  section: 1,
  blocks: [{ type: "heading", level: 2, number: "7.3.1", text: "Lines" }, weldLog],
};

const awkward: readonly Block[] = [
  { type: "anchor", anchor: "W07" },
  { type: "paragraph", text: [hostile], notes: [{ lead: hostile, text: [code(hostile)] }] },
  { type: "paragraph", text: [signs, " ", { type: "strong", text: longId }, " ", whole("12 345.678 9 N/mm²")] },
  {
    type: "facts",
    facts: [
      { label: hostile, value: [hostile] },
      { label: "Name", value: ["Ædwin Quillmark-Ångström"], anchor: "name" },
      { label: longId, value: [link("person/r-W07.html", longId, "name")], gap: true },
    ],
    notes: [{ lead: "Source", text: [code("people/welders.json:23:7")] }],
  },
  {
    type: "prose",
    markdown: `Remark of a record, in **bold** and *slanted*.\n\n${hostile}\n\n[bad](javascript:alert(1)) ![picture](http://example.invalid/x.png) http://example.invalid\n\n- one\n- two\n\n| a | b |\n|---|---|\n| 1 | 2 |\n\n# Not a heading of the book`,
    notes: [{ text: ["As written by the shop."] }],
  },
  { type: "heading", level: 2, text: `${longId} ${hostile}` },
  {
    type: "list",
    ordered: true,
    items: [
      [{ type: "soft", text: "soft" }, " and ", { type: "em", text: "slanted" }],
      [code(`SHA-256 ${"3c1d90ae".repeat(8)}`)],
    ],
  },
];

export const personPage: Page = {
  url: "person/r-W07.html",
  number: "7.2",
  kindLine: "Person",
  title: `W07 ${hostile}`,
  under: [hostile],
  section: 1,
  blocks: awkward,
};

import type { Cell, Mark, Row, TableBlock, Target, Text } from "../../src/publish/blocks.ts";

const text = (value: string): Cell => ({ type: "text", text: [value] });
const rich = (...value: Text): Cell => ({ type: "text", text: value });
const number = (value: string): Cell => ({ type: "number", text: value });
const mark = (value: Mark): Cell => ({ type: "mark", mark: value });
const ditto = (full: string): Cell => ({ type: "ditto", full });
const empty: Cell = { type: "empty" };
const link = (page: string, shown: string, anchor?: string): Cell => {
  const to: Target = anchor === undefined ? { page } : { page, anchor };
  return rich({ type: "link", to, text: shown });
};

const layers = ["root", "fill", "cap"];

/** Three layers of one joint; the second and third repeat its name. */
function jointRows(index: number): readonly Row[] {
  const joint = `C${index + 1}`;
  return layers.map((layer, position) => ({
    ...(position === 0 && { anchor: joint }),
    cells: [
      position === 0
        ? link(index === 1 ? "joint/r-C2.html" : "weld-log/g-C.html", joint, index === 1 ? undefined : joint)
        : ditto(joint),
      text(layer),
      link("person/r-W07.html", "W07"),
      rich({ type: "whole", text: `2026-06-${String(1 + index).padStart(2, "0")}` }),
      text("WPS-03"),
      text("135"),
      rich({ type: "whole", text: "B-2217" }),
      position === 0 ? number("8.0") : empty,
      position === 0 ? number(index === 3 ? "12 566.5" : "3745") : empty,
      number((0.88 + index * 0.01 + position * 0.1).toFixed(position === 2 ? 3 : 2)),
      mark(index === 4 && position === 1 ? "failed" : index === 5 ? "not judged" : "passed"),
    ],
  }));
}

/** 60 rows in 20 groups of three: has to break over pages, with its head repeated. */
export const weldLog: TableBlock = {
  type: "table",
  number: "7.3",
  title: "Weld log, 60 lines",
  wide: true,
  columns: [
    { head: "Joint", align: "left", width: 1 },
    { head: "Layer", align: "left", width: 1 },
    { head: "Welder", align: "left", width: 1 },
    { head: "Date", align: "left", width: 1.6 },
    { head: "Procedure", align: "left", width: 1.4 },
    { head: "Process", align: "left", width: 1 },
    { head: "Batch", align: "left", width: 1.2 },
    { head: "Thickness", unit: "mm", align: "number", width: 1.2 },
    { head: "Length", unit: "mm", align: "number", width: 1.2 },
    { head: "Heat input", unit: "kJ/mm", align: "number", width: 1.2 },
    { head: "Verdict", align: "left", width: 1.6 },
  ],
  groups: Array.from({ length: 20 }, (_, index) => jointRows(index)),
  remark: ["The verdict of a line is about the line itself; the chain of a joint stands on its own page."],
  notes: [{ lead: "Basis", text: ["heat input: WPS-03, 0.80 to 1.30 kJ/mm (contract)"] }],
};

/** Eighteen columns: too wide for the page in any direction but one. */
export const wideTable: TableBlock = {
  type: "table",
  number: "6.4",
  title: "Chemical composition of all heats in per cent by mass, with the carbon equivalent CEV",
  wide: true,
  columns: [
    { head: "Heat", align: "left", width: 2.4 },
    ...["C", "Si", "Mn", "P", "S", "N", "Al", "Cr", "Cu", "Mo", "Ni", "Nb", "Ti", "V", "Cr+Cu+Mo+Ni", "CEV"].map(
      (head) => ({ head, unit: "%", align: "number" as const, width: 1 }),
    ),
    { head: "Verdict", align: "left" as const, width: 1.8 },
  ],
  groups: [
    ["84713", "84721", "90 118-A/2"].map((heat, index) => ({
      cells: [
        link("material-certificate/r-CRT-003.html", heat),
        ...["0.14", "0.21", "1.12", "0.011", "0.004", "0.0062", "0.034", "0.05", "0.09", "0.01", "0.04"].map(number),
        number("<0.003"),
        number("0.002"),
        number("0.003"),
        number("0.19"),
        number("0.35"),
        mark(index === 2 ? "not applicable" : "passed"),
      ],
    })),
  ],
};

/** Ranges of every form, and numbers whose decimals differ. */
export const chemistry: TableBlock = {
  type: "table",
  number: "6.2",
  title: "Ladle analysis in per cent by mass",
  columns: [
    { head: "Element", align: "left", width: 1.2 },
    { head: "Value", align: "number", width: 1 },
    { head: "min", align: "number", width: 1 },
    { head: "max", align: "number", width: 1 },
    { head: "Value in its range", align: "left", width: 2.4 },
    { head: "Verdict", align: "left", width: 1.8 },
  ],
  groups: [
    [
      {
        anchor: "C",
        cells: [
          text("C"),
          number("0.14"),
          empty,
          number("0.20"),
          { type: "range", high: 0.2, value: 0.14, spoken: "carbon 0.14 %, at most 0.20 %" },
          mark("passed"),
        ],
      },
      {
        cells: [
          text("Mn"),
          number("1.12"),
          number("0.80"),
          number("1.40"),
          { type: "range", low: 0.8, high: 1.4, value: 1.12, spoken: "manganese 1.12 %, 0.80 to 1.40 %" },
          mark("passed"),
        ],
      },
      {
        cells: [
          text("Al"),
          number("0.034"),
          number("0.020"),
          empty,
          { type: "range", low: 0.02, value: 0.034, spoken: "aluminium 0.034 %, at least 0.020 %" },
          mark("passed"),
        ],
      },
      {
        cells: [
          text("Nb"),
          number("<0.003"),
          empty,
          number("0.03"),
          { type: "range", high: 0.03, value: 0.003, below: true, spoken: "niobium less than 0.003 %, at most 0.03 %" },
          mark("passed"),
        ],
      },
      {
        cells: [
          text("S"),
          number("0.0185"),
          empty,
          number("0.010"),
          { type: "range", high: 0.01, value: 0.0185, spoken: "sulphur 0.0185 %, at most 0.010 %" },
          {
            type: "mark",
            mark: "failed",
            because: [
              { type: "link", to: { page: "findings.html", anchor: "f-sulphur" }, text: "sulphur of heat 84713" },
            ],
          },
        ],
      },
    ],
    [
      {
        cells: [
          rich("Cr+Cu+Mo+Ni, ", { type: "soft", text: "sum" }),
          number("0.19"),
          empty,
          number("0.70"),
          { type: "range", high: 0.7, value: 0.19, spoken: "sum 0.19 %, at most 0.70 %" },
          mark("not applicable"),
        ],
      },
    ],
  ],
  remark: ["Thin rule: the permitted range. Heavy stroke: the value. Heavy rule from zero: known only as less than."],
  notes: [{ lead: "Basis", text: ["EN 10028-2, chemical composition (from memory)"] }],
};

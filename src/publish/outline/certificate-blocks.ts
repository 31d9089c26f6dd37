import { isList, isObject, type Json } from "../../model/json.ts";
import { measure, parseQuantity, type Measure } from "../../model/quantity.ts";
import type { BookRecord } from "../../model/record.ts";
import { describeBasis } from "../../model/basis.ts";
import type { Block, Cell, Mark, Row } from "../blocks.ts";
import { plain, type Context } from "./context.ts";
import type { Extra } from "./extras.ts";
import type { Numbering } from "./record-blocks.ts";

const names: Readonly<Record<string, string>> = {
  C: "Carbon", Si: "Silicon", Mn: "Manganese", P: "Phosphorus", S: "Sulphur", N: "Nitrogen", Al: "Aluminium", Cr: "Chromium",
  Cu: "Copper", Mo: "Molybdenum", Ni: "Nickel", Nb: "Niobium", Ti: "Titanium", V: "Vanadium", B: "Boron",
}; // prettier-ignore

interface Bounds {
  min?: Measure;
  max?: Measure;
}

/** The ladle analysis of every row against the limits of its grade, each value drawn in its range. */
export function certificateBlocks(context: Context, record: BookRecord, next: Numbering): Extra {
  const rows = record.value["rows"];
  const before = (isList(rows) ? rows : []).flatMap((row) => (isObject(row) ? chemistryTable(context, row, next) : []));
  return { before, after: [], skip: new Set(["rows[].chemistry"]) };
}

function chemistryTable(context: Context, row: { readonly [name: string]: Json }, next: Numbering): Block[] {
  const analysis = row["chemistry"];
  if (!isList(analysis) || analysis.length === 0) return [];
  const { limits, basis } = limitsOf(context, row);
  const values = new Map(
    analysis
      .filter(isObject)
      .flatMap((one) =>
        typeof one["element"] === "string" && typeof one["value"] === "string"
          ? [[one["element"], one["value"]] as const]
          : [],
      ),
  );
  const single = [...values].map(([element, text]) => chemistryRow(element, text, percent(text), limits.get(element)));
  const sums = [...limits].flatMap(([element, bounds]): Row[] => {
    const parts = element.split("+");
    const found = parts.map((part) => values.get(part)).filter((text) => text !== undefined);
    if (parts.length < 2 || found.length < parts.length) return [];
    const sum = found.reduce((total, text) => total + (percent(text)?.high ?? 0), 0);
    const text = `${Number(sum.toFixed(4))} %`;
    return [chemistryRow(element, text, percent(text), bounds)];
  });
  return [
    { type: "heading", level: 2, text: `Chemical composition, heat ${plain(row["heat"])}` },
    {
      type: "table",
      number: next(),
      title: `Ladle analysis in per cent by mass, against the limits of ${plain(row["grade"])}`,
      columns: [
        { head: "Element", align: "left", width: 1.1 },
        { head: "", align: "left", width: 1.4 },
        { head: "Value", align: "number", unit: "%", width: 1 },
        { head: "min", align: "number", unit: "%", width: 0.9 },
        { head: "max", align: "number", unit: "%", width: 0.9 },
        { head: "Value in its range", align: "left", width: 2.4 },
        { head: "Verdict", align: "left", width: 1.4 },
      ],
      groups: [single, ...(sums.length > 0 ? [sums] : [])],
      remark: [
        "Thin rule: the permitted range, each on its own scale, with an end tick at a limit. Heavy stroke: the value as certified. Heavy rule from zero: a value given only as “less than”.",
      ],
      notes: basis === "" ? [] : [{ lead: "Basis", text: [basis] }],
    },
  ];
}

const percent = (text: string): Measure | undefined => {
  const parsed = parseQuantity(text, { unit: "%" });
  return parsed.ok ? measure(parsed.quantity, "%") : undefined;
};

function limitsOf(
  context: Context,
  row: { readonly [name: string]: Json },
): { limits: ReadonlyMap<string, Bounds>; basis: string } {
  const limits = new Map<string, Bounds>();
  const table = context.judged.tables.get("grade-chemistry");
  const found = table?.rows.find(({ keys }) => ["standard", "edition", "grade"].every((key) => keys[key] === row[key]));
  const points = found?.values["limits"];
  if (found === undefined || points === undefined || typeof points === "string") return { limits, basis: "" };
  for (const { element = "", bound, content = "" } of points) {
    const limit = percent(content);
    if (limit === undefined) continue;
    const bounds = limits.get(element) ?? {};
    limits.set(element, { ...bounds, [bound === "least" ? "min" : "max"]: limit });
  }
  return { limits, basis: describeBasis(found.basis) };
}

function chemistryRow(element: string, text: string, value: Measure | undefined, bounds: Bounds | undefined): Row {
  const digits = text.replace(/ ?%$/, "");
  const limit = (one: Measure | undefined): Cell =>
    one === undefined ? { type: "empty" } : { type: "number", text: one.text.replace(/ ?%$/, "") };
  const mark: Mark | undefined = value === undefined || bounds === undefined ? undefined : inside(value, bounds);
  return {
    cells: [
      { type: "text", text: [element] },
      { type: "text", text: [{ type: "soft", text: names[element] ?? "" }] },
      { type: "number", text: digits },
      limit(bounds?.min),
      limit(bounds?.max),
      value === undefined || bounds === undefined ? { type: "empty" } : rangeCell(value, bounds, digits),
      mark === undefined ? { type: "text", text: [{ type: "soft", text: "no limit" }] } : { type: "mark", mark },
    ],
  };
}

function inside(value: Measure, { min, max }: Bounds): Mark {
  const low = min === undefined || value.low >= min.value - 1e-9;
  const high = max === undefined || value.high <= max.value + 1e-9;
  return low && high ? "passed" : "failed";
}

function rangeCell(value: Measure, { min, max }: Bounds, digits: string): Cell {
  return {
    type: "range",
    value: value.value,
    ...(min !== undefined && { low: min.value }),
    ...(max !== undefined && { high: max.value }),
    ...(digits.startsWith("<") && { below: true }),
    spoken: `${digits} %, ${min === undefined ? "" : `at least ${min.text}`}${min !== undefined && max !== undefined ? ", " : ""}${max === undefined ? "" : `at most ${max.text}`}`,
  };
}

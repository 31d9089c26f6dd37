import { isList, isObject, type Json } from "../../model/json.ts";
import type { Compared } from "../../model/finding.ts";
import { worst } from "../../model/mark.ts";
import { measure, parseQuantity } from "../../model/quantity.ts";
import { addressOf, type BookRecord } from "../../model/record.ts";
import { describeBasis } from "../../model/basis.ts";
import type { Block, Cell, Row } from "../blocks.ts";
import { plain, type Context } from "./context.ts";
import { grouped } from "../../model/grouped.ts";
import type { Extra } from "./extras.ts";
import type { Numbering } from "./record-blocks.ts";

const names: Readonly<Record<string, string>> = {
  C: "Carbon", Si: "Silicon", Mn: "Manganese", P: "Phosphorus", S: "Sulphur", N: "Nitrogen", Al: "Aluminium", Cr: "Chromium",
  Cu: "Copper", Mo: "Molybdenum", Ni: "Nickel", Nb: "Niobium", Ti: "Titanium", V: "Vanadium", B: "Boron",
}; // prettier-ignore

/** The ladle analysis of every row as it was held against the limits of its grade, each value drawn in its range. */
export function certificateBlocks(context: Context, record: BookRecord, next: Numbering): Extra {
  const rows = record.value["rows"];
  const before = (isList(rows) ? rows : []).flatMap((row, index) =>
    isObject(row) ? chemistryTable(context, record, { row, pointer: `/rows/${index}` }, next) : [],
  );
  return { before, after: [], skip: new Set(["rows[].chemistry"]) };
}

interface Place {
  readonly row: { readonly [name: string]: Json };
  readonly pointer: string;
}

function chemistryTable(context: Context, record: BookRecord, { row, pointer }: Place, next: Numbering): Block[] {
  const analysis = row["chemistry"];
  if (!isList(analysis) || analysis.length === 0) return [];
  const compared = comparedIn(context, record, `${pointer}/chemistry`);
  const single = analysis.filter(isObject).map((one) => {
    const element = plain(one["element"]);
    return chemistryRow(element, plain(one["value"]), compared.get(element), compared.size > 0);
  });
  const sums = [...compared].flatMap(([name, one]) =>
    name.includes("+") ? [chemistryRow(name, one[0]?.value ?? "", one, true)] : [],
  );
  const basis = [...new Set([...compared.values()].flat().map((one) => describeBasis(one.basis)))].join("; ");
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

/** What was compared of the values below a place, by its name: an element may have a least and a most. */
function comparedIn(context: Context, record: BookRecord, pointer: string): ReadonlyMap<string, readonly Compared[]> {
  const inside = `${addressOf(record, pointer)}/`;
  const all = (context.outcomes.get(addressOf(record)) ?? []).flatMap(({ compared = [] }) => compared);
  return grouped(
    all.filter(({ places }) => places.some((place) => place.startsWith(inside))),
    ({ name }) => name,
  );
}

const percent = (text: string | undefined): number | undefined => {
  const parsed = parseQuantity(text ?? "", { unit: "%" });
  return parsed.ok ? measure(parsed.quantity, "%").value : undefined;
};

const digitsOf = (text: string) => text.replace(/ ?%$/, "");

function chemistryRow(element: string, text: string, compared: readonly Compared[] | undefined, judged: boolean): Row {
  const least = compared?.find((one) => one.least !== undefined)?.least;
  const most = compared?.find((one) => one.most !== undefined)?.most;
  const limit = (one: string | undefined): Cell =>
    one === undefined ? { type: "empty" } : { type: "number", text: digitsOf(one) };
  return {
    cells: [
      { type: "text", text: [element] },
      { type: "text", text: [{ type: "soft", text: names[element] ?? "" }] },
      { type: "number", text: digitsOf(text) },
      limit(least),
      limit(most),
      compared === undefined ? { type: "empty" } : rangeCell(text, least, most),
      compared === undefined
        ? { type: "text", text: [{ type: "soft", text: judged ? "no limit" : "not compared" }] }
        : { type: "mark", mark: worst(compared.map(({ verdict }) => verdict)) },
    ],
  };
}

function rangeCell(text: string, least: string | undefined, most: string | undefined): Cell {
  const [value, low, high] = [percent(text), percent(least), percent(most)];
  if (value === undefined) return { type: "empty" };
  const limits = [
    ...(least === undefined ? [] : [`at least ${least}`]),
    ...(most === undefined ? [] : [`at most ${most}`]),
  ];
  return {
    type: "range",
    value,
    ...(low !== undefined && { low }),
    ...(high !== undefined && { high }),
    ...(text.startsWith("<") && { below: true }),
    spoken: `${digitsOf(text)} %, ${limits.join(", ")}`,
  };
}

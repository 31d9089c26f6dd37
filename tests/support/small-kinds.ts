import type { Field, Kind } from "../../src/model/kind.ts";

type Options = Partial<Omit<Field, "name" | "type" | "fields" | "item">>;
/** A field before it has a name. */
export type Made = Omit<Field, "name" | "title" | "description"> & { readonly title?: string };

const made = (type: Field["type"], options: Options = {}): Made => ({ type, required: false, ...options });

export const text = (options?: Options): Made => made("text", options);
export const oneOf = (options: readonly string[], more?: Options): Made => made("text", { options, ...more });
export const flag = (options?: Options): Made => made("boolean", options);
export const whole = (options?: Options): Made => made("integer", options);
export const quantity = (unit: string, options?: Options): Made => made("quantity", { unit, ...options });
export const link = (target: string | readonly string[], options?: Options): Made =>
  made("link", { targets: typeof target === "string" ? [target] : target, ...options });
export const event = (options?: Options): Made => made("date", { date: "event", ...options });
export const day = (options?: Options): Made => made("date", options);
export const object = (fields: Readonly<Record<string, Made>>, options?: Options): Made => ({
  ...made("object", options),
  fields: named(fields),
});
export const list = (item: Made, options?: Options): Made => ({
  ...made("list", options),
  item: { name: "", title: "", description: "", ...item },
});

const named = (fields: Readonly<Record<string, Made>>): ReadonlyMap<string, Field> =>
  new Map(Object.entries(fields).map(([name, field]) => [name, { name, title: name, description: name, ...field }]));

export function kind(name: string, fields: Readonly<Record<string, Made>>, derived = false): Kind {
  return {
    name,
    title: name,
    description: name,
    section: "other",
    page: "each",
    tableOnPaper: false,
    carry: "never",
    columns: [],
    fields: named(fields),
    derived,
    single: {},
    row: {},
  };
}

const exception = {
  answers: list(object({ finding: text({ required: true }), digest: text({ required: true }) }), { rowKey: "finding" }),
  reason: text(),
  authority: text(),
  by: text(),
  date: event(),
  end: day({ date: "limit" }),
};
const sheetRow = object({ symbol: text({ required: true }), value: quantity("any"), word: text() });

/** Kinds every small book has, as far as judging reads them. */
const always: readonly Kind[] = [
  kind("book", {
    profile: text(),
    register: text(),
    requireVerifiedBasis: flag(),
    overrides: list(
      object({
        parameter: text({ required: true }),
        value: text(),
        basis: object({ class: text(), document: text() }),
      }),
      {
        rowKey: "parameter",
      },
    ),
  }),
  kind("issue", {
    state: text(),
    issueDate: day(),
    dataCutOff: day(),
    milestones: list(object({ name: text({ required: true }), reached: day() }), { rowKey: "name" }),
  }),
  ...["answered-query", "waiver", "deviation", "order-exception"].map((name) => kind(name, exception)),
  kind("original", { path: text({ required: true }), sha256: text() }),
  kind("calculation-sheet", {
    calculation: text({ required: true }),
    subject: link(["part", "joint", "certificate#rows"], { required: true }),
    inputs: list(sheetRow, { rowKey: "symbol" }),
    results: list(sheetRow, { rowKey: "symbol" }),
    adopted: quantity("any"),
    adopts: text(),
    signatures: list(
      object({ role: oneOf(["design", "checker"], { required: true }), person: text(), date: event({ due: "now" }) }),
      { rowKey: "role" },
    ),
  }),
  kind("reference-table", {
    table: text({ required: true }),
    standard: text(),
    edition: text(),
    checkedBy: text(),
    date: event(),
    rows: list(
      object({
        row: text({ required: true }),
        cells: list(
          object({
            name: text({ required: true }),
            value: text(),
            points: list(object({ values: list(object({ name: text(), value: quantity("any") })) })),
          }),
          { rowKey: "name" },
        ),
      }),
      { rowKey: "row" },
    ),
  }),
];

export function kindsOf(own: readonly Kind[]): ReadonlyMap<string, Kind> {
  return new Map([...always, ...own].map((one) => [one.name, one]));
}

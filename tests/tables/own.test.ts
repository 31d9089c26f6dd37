import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { loadTables, tableSchema } from "../../src/load/tables.ts";
import { parseJson } from "../../src/load/parse-json.ts";
import { schemaErrors } from "../../src/load/schema-errors.ts";
import { pseudoKind } from "../../src/load/pseudo-kind.ts";
import { quantity as quantityOf, table as tableOf, text as textOf } from "../../src/model/input.ts";
import { isObject, type Json, type JsonObject } from "../../src/model/json.ts";
import { rule } from "../../src/model/rule.ts";
import { packageRoot } from "../../src/root.ts";
import { basis, define, judged, open, verdicts } from "../support/small-book.ts";
import { quantity, text } from "../support/small-kinds.ts";

const shipped = join(packageRoot, "src/tables/data");
const schema = tableSchema(join(packageRoot, "schemas"));

describe("the shipped files", () => {
  test.each(readdirSync(shipped))("%s keeps to the schema and says where it finds it", (name) => {
    const value = parseJson(readText(join(shipped, name)));
    if (!isObject(value)) throw new Error(`${name} is no object`);
    expect(schemaErrors(pseudoKind("tables", "File of tables", schema), "row", value)).toEqual([]);
    expect(value["$schema"]).toBe("../../../schemas/tables/table.json");
  });
  test("are read whole", () => expect(loadTables(shipped, schema).length).toBeGreaterThanOrEqual(10));
});

function readText(file: string): string {
  return readFileSync(file, "utf8");
}

let dir = "";
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), "tables-"));
});
afterEach(() => rmSync(dir, { recursive: true }));

/** A table of ranges: what a thickness that was tested covers, by process. */
const head = {
  title: "Ranges",
  standard: "S 1",
  keys: { process: {}, tested: { unit: "mm" } },
  columns: {
    from: { unit: "mm", means: "least thickness covered" },
    to: { unit: "mm", means: "greatest thickness covered", optional: true },
    covers: { means: "processes covered", list: true },
  },
};
const bases = { memory: { class: "from memory", document: "S 1", topic: "ranges" } };
const rows = [
  ["135", "up to 3", "= tested", "= max('3 mm', 2*tested)", ["135", "138"]],
  ["135", "over 3", 3, null, ["135", "138"]],
  [["141", "142"], "up to 12", 3, "= 2*tested", ["141", "142"]],
  ["any other", "up to 12", 3, "= 1.5*tested", []],
];
const file = (changes: JsonObject = {}): JsonObject => ({
  tables: { ranges: head },
  bases,
  rows: [{ of: "ranges", basis: "memory", cells: rows }],
  ...changes,
});
const load = (value: Json = file(), name = "s-1.json") => {
  writeFileSync(join(dir, name), JSON.stringify(value));
  return loadTables(dir, schema);
};

describe("a file of tables", () => {
  test("gives one row for each entry of a list that stands in place of a key", () => {
    const [ranges] = load();
    expect(ranges?.rows).toHaveLength(5);
    expect(ranges?.rows[2]).toMatchObject({
      keys: { process: "141", tested: { upTo: 12 } },
      values: { from: "3 mm", to: "= 2*tested", covers: ["141", "142"] },
      basis: { class: "from memory" },
    });
    expect(ranges?.rows[1]?.values).not.toHaveProperty("to");
  });
  test("may hold rows of a table that another file describes", () => {
    writeFileSync(join(dir, "a.json"), JSON.stringify({ tables: { ranges: head } }));
    const more = {
      bases,
      with: { process: "111" },
      rows: [{ of: "ranges", basis: "memory", cells: [["up to 9", 3, 9, []]] }],
    };
    expect(load(more)[0]?.rows[0]?.keys).toEqual({ process: "111", tested: { upTo: 9 } });
  });
  test("states points by coordinates, beside those that rows have in common", () => {
    const curve = {
      title: "Curve",
      standard: "S 1",
      keys: { grade: {} },
      columns: {
        points: { means: "curve", points: { at: { unit: "°C" }, value: { unit: "MPa" }, note: { else: "none" } } },
      },
    };
    const [table] = load({
      tables: { curve },
      bases,
      rows: [
        { of: "curve", basis: "memory", with: { points: { at: [20, 100] } }, cells: [["A", [235, [210, "read"]]]] },
      ],
    });
    expect(table?.rows[0]?.values["points"]).toEqual([
      { at: "20 °C", value: "235 MPa", note: "none" },
      { at: "100 °C", value: "210 MPa", note: "read" },
    ]);
  });

  const withRows = (...cells: readonly Json[]) => file({ rows: [{ of: "ranges", basis: "memory", cells }] });
  test.each<readonly [string, Json, string]>([
    ["no object", [], "s-1.json:1:1: it is no file of tables"],
    ["a word of its own", file({ wiht: {} }), '"wiht" is no property of the file of tables; write "with"'],
    [
      "a table that nobody describes",
      file({ rows: [{ of: "range", basis: "memory", cells: rows }] }),
      'there is no table "range"; write "ranges"',
    ],
    [
      "a basis that nobody states",
      file({ rows: [{ of: "ranges", basis: "memmory", cells: rows }] }),
      'there is no basis "memmory"; write "memory"',
    ],
    [
      "a basis that names no document",
      file({ bases: { memory: { class: "from memory" } } }),
      'the basis "memory" lacks what its class states',
    ],
    ["no rows", file({ rows: [] }), 'table "ranges" has no rows'],
    [
      "a common cell of no column",
      file({ with: { proces: "135" } }),
      'table "ranges" has no "proces"; write "process"',
    ],
    [
      "an interval in other words",
      withRows(["135", "3-12", 3, 3, []]),
      'tested is "3-12"; write an interval such as "over 3 up to 16"',
    ],
    [
      "a value of another dimension",
      withRows(["135", "up to 3", "3 bar", 3, []]),
      'from is "3 bar"; expected a value in mm',
    ],
    ["a value left out", withRows(["135", "up to 3", null, 3, []]), "the row states no from"],
    ["a cell too many", withRows(["135", "up to 3", 3, 3, [], 1]), "the row has 6 cells; write at most 5"],
    ["a formula that cannot be read", withRows(["135", "up to 3", 3, "= 2**tested", []]), "expected a value, found"],
    [
      "a formula of what is no key",
      withRows(["135", "up to 3", 3, "= 2*thickness", []]),
      '"thickness" of the formula is no key with a unit, as tested is',
    ],
    ["a formula in another unit", withRows(["135", "up to 3", 3, "= tested^2", []]), "the formula does not fit"],
    [
      "two rows that both answer",
      withRows(["135", "up to 3", 3, 3, []], ["135", "from 2 up to 5", 3, 3, []]),
      "has two rows for process 135, tested from 2 up to 5; keep one of them: the other is for process 135, tested up to 3",
    ],
    [
      "a unit that there is not",
      file({ tables: { ranges: { ...head, keys: { process: {}, tested: { unit: "mn" } } } } }),
      'there is no unit "mn"',
    ],
  ])("%s is refused, with its place and what to do", (_, value, said) => {
    expect(() => load(value)).toThrow(said);
    expect(() => load(value)).toThrow(/s-1\.json:\d+:\d+: /);
  });
  test("that is no JSON is refused where it breaks", () => {
    writeFileSync(join(dir, "s-1.json"), '{"tables": {,}}');
    expect(() => loadTables(dir, schema)).toThrow(/s-1\.json:1:\d+: /);
  });
});

test("the example of DEVELOPERS.md is a table", () => {
  const guide = readText(join(packageRoot, "DEVELOPERS.md"));
  const [, example = ""] = /## Add a table[^]*?```json\n([^]*?)```/.exec(guide) ?? [];
  const [range] = load(parseJson(example) ?? {});
  expect(range?.rows.map(({ keys }) => keys["process"])).toEqual(["135", "138", "any other", "135", "138"]);
});

describe("a rule that asks a table with keys of its own", () => {
  const kinds = { part: { thickness: quantity("mm", { due: "now" }), process: text({ due: "now" }) } };
  const covered = rule({
    id: "covered",
    title: "covered",
    kind: "part",
    severity: "nonconformity",
    owner: "design",
    basis,
    examples: [],
    inputs: { thickness: quantityOf("thickness", "mm"), process: textOf("process"), ranges: tableOf("ranges") },
    *check({ thickness, process, ranges }) {
      const row = ranges(process, thickness);
      const to = row.quantity("to");
      if (to !== undefined && to.value < 5)
        yield {
          at: "thickness",
          message: `covers to ${to.text} and ${row.texts("covers").join(", ")}`,
          why: "w",
          hint: "h",
        };
    },
  });
  const run = (process: string, thickness: string, own: Readonly<Record<string, JsonObject>> = {}) =>
    judged(define({ kinds, rules: [covered], tables: load() }), {
      records: { part: { P1: { thickness, process } }, "reference-table": own },
      book: {},
    });
  const said = (...given: Parameters<typeof run>) =>
    run(...given).findings.flatMap(({ severity, message }) => (severity === "note" ? [] : [message]));

  test("gets formulas in numbers, from the key in its unit", () => {
    expect(said("135", "1 mm")).toEqual(["covers to 3 mm and 135, 138"]);
    expect(said("135", "0.18 cm")).toEqual(["covers to 3.6 mm and 135, 138"]);
    expect(said("142", "2.2 mm")).toEqual(["covers to 4.4 mm and 141, 142"]);
  });
  test("gets the row for any other, where no row names its key", () =>
    expect(said("311", "3 mm")).toEqual(["covers to 4.5 mm and "]));
  test("a cell left open states nothing", () => expect(said("135", "9 mm")).toEqual([]));
  test("without a row it is not judged, and says for which key", () => {
    expect(verdicts(run("141", "13 mm"))["covered|part:P1"]).toBe("not judged: table-row|process 141, tested 13 mm");
    expect(open(run("141", "13 mm"))).toEqual(["query table-row|process 141, tested 13 mm"]);
  });
  test("rests on the basis of the row, which a book that asks for verified ones is told", () => {
    const book = judged(define({ kinds, rules: [covered], tables: load() }), {
      records: { part: { P1: { thickness: "9 mm", process: "135" } } },
      book: { requireVerifiedBasis: true },
    });
    expect(book.findings.map(({ message }) => message)).toContain(
      '"table ranges (from memory)" rests on S 1, ranges (from memory)',
    );
  });

  const cell = (name: string, value: string) => ({ name, value });
  const replaced = (...cells: readonly JsonObject[]): Readonly<Record<string, JsonObject>> => ({
    T1: {
      table: "ranges",
      standard: "S 1",
      edition: "2021",
      checkedBy: "MT",
      date: "2026-01-05",
      rows: [{ row: "1", cells }],
    },
  });
  test("is judged by the book's own table, formulas, lists and any other in it", () => {
    const own = replaced(
      cell("process", "any other"),
      cell("tested", "any other"),
      cell("from", "3 mm"),
      cell("to", "= tested/2"),
      cell("covers", "131, 135"),
    );
    expect(said("135", "9 mm", own)).toEqual(["covers to 4.5 mm and 131, 135"]);
    expect(
      said(
        "135",
        "1 mm",
        replaced(cell("process", "135"), cell("tested", "up to 9"), cell("from", "3 mm"), cell("covers", "none")),
      ),
    ).toEqual([]);
  });
  test("a formula of its own that does not fit is a finding, and what asks waits", () => {
    const own = replaced(cell("process", "135"), cell("tested", "up to 9"), cell("to", "= thickness"));
    const book = run("135", "1 mm", own);
    expect(open(book)).toEqual(["nonconformity reference-table-form|reference-table:T1|rows"]);
    expect(said("135", "1 mm", own)).toEqual([
      'row 1 has no sound value of to; "thickness" of the formula is no key with a unit, as tested is',
    ]);
    expect(verdicts(book)["covered|part:P1"]).toBe("not judged: reference-table-form|reference-table:T1|rows");
  });
  test("a table there is not is a fault of the rule, whatever the book", () =>
    expect(() =>
      judged(define({ kinds, rules: [rule({ ...covered, inputs: { ranges: tableOf("range") } })], tables: load() }), {
        records: {},
      }),
    ).toThrow('there is no table "range"'));
});

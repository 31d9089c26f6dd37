import { readdirSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { composedSchemas } from "../../src/load/compose.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { isList, isObject, type JsonObject } from "../../src/model/json.ts";
import { fieldAt, type Kind } from "../../src/model/kind.ts";
import { ProgramError } from "../../src/model/program-error.ts";
import { schemas } from "../schemas/read-schemas.ts";
import { common, folder, kinds as small, schemaFiles, schemaOf } from "./folder.ts";

const shipped = loadKinds(["schemas"]);
const kindOf = (kinds: ReadonlyMap<string, Kind>, name: string): Kind => {
  const kind = kinds.get(name);
  if (kind === undefined) throw new Error(`no kind ${name}`);
  return kind;
};

describe("the shipped kinds", () => {
  it("are one for each schema file, and the derived heat", () => {
    const files = readdirSync("schemas").filter(
      (name) => name.endsWith(".schema.json") && name !== "common.schema.json",
    );
    expect([...shipped.keys()]).toEqual([...files.map((name) => name.replace(".schema.json", "")), "heat"].sort());
    expect([...shipped.values()].filter(({ derived }) => derived).map(({ name }) => name)).toEqual(["heat"]);
  });
  it("say each what the next job takes along", () => {
    for (const [name, schema] of schemas)
      expect([name, schema["x-carry"]]).toEqual([name, kindOf(shipped, name).carry]);
    expect(kindOf(shipped, "heat").carry).toBe("never");
    expect(fieldAt(kindOf(shipped, "inspection-step"), "points[].outcome")?.carry).toBe("never");
  });
  it("have fields of the types their schemas say", () => {
    const type = (kind: string, path: string) => fieldAt(kindOf(shipped, kind), path)?.type;
    expect(type("joint", "throat")).toBe("quantity");
    expect(type("joint", "parts")).toBe("list");
    expect(type("joint", "parts[]")).toBe("link");
    expect(type("issue", "issueDate")).toBe("date");
    expect(type("joint", "pressureBearing")).toBe("boolean");
    expect(type("inspection-step", "step")).toBe("integer");
    expect(type("joint", "remarks")).toBe("text");
    expect(type("joint", "signatures[].person")).toBe("link");
    expect(fieldAt(kindOf(shipped, "heat"), "rows[]")).toMatchObject({
      type: "link",
      targets: ["material-certificate#rows"],
    });
    expect(fieldAt(kindOf(shipped, "material-certificate"), "rows")?.rowKey).toBeDefined();
    expect(kindOf(shipped, "joint").fields.get("throat")).toMatchObject({
      unit: "mm",
      title: "Throat",
      required: false,
    });
    expect(kindOf(shipped, "joint").fields.get("id")).toMatchObject({ required: true, type: "text" });
    expect([...kindOf(shipped, "joint").fields.keys()]).not.toContain("kind");
  });
  it("compose to schemas that stand alone and take both shapes of a file, and nothing else", () => {
    const ajv = new Ajv2020({ strict: true, strictRequired: false, allErrors: true });
    ajv.addVocabulary(
      [
        "section",
        "closed-by",
        "belongs",
        "acts",
        "instead",
        "unprinted",
        "sought",
        "whole-from",
        "there-by",
        "not-below",
        "dated",
        "unread",
        "transcribes",
        "unless",
        "replaces",
        "called",
        "compared",
        "number",
        "page",
        "label",
        "columns",
        "link",
        "unit",
        "difference",
        "plausible",
        "sign",
        "due",
        "owner",
        "date",
        "row-key",
        "carry",
        "type",
      ].map((word) => `x-${word}`),
    );
    const composed = composedSchemas(shipped);
    expect(composed.size).toBe(schemas.size);
    for (const [kind, schema] of schemas) {
      const check = ajv.compile(composed.get(`${kind}.schema.json`) ?? false);
      const examples = schema["examples"];
      const [example] = isList(examples) ? examples : [];
      if (!isObject(example)) throw new Error(`${kind} has no example`);
      const row = Object.fromEntries(Object.entries(example).filter(([name]) => name !== "kind" && name !== "$schema"));
      expect([kind, check({ $schema: "../x.json", kind, ...row }), check.errors]).toEqual([kind, true, null]);
      expect([kind, check({ kind, records: [row] }), check.errors]).toEqual([kind, true, null]);
      expect(check({ kind, records: [{ ...row, unheardOf: 1 }] })).toBe(false);
      expect(check({ kind, ...row, unheardOf: 1 })).toBe(false);
      expect(check({ kind: "other", ...row })).toBe(false);
    }
  });
});

it("a new kind is one schema file in a folder of its own", () => {
  const more = folder({
    "paint-batch.schema.json": schemaOf("paint-batch", {
      part: { $ref: "common.schema.json#/$defs/link", description: "Part.", "x-link": ["part"] },
    }),
  });
  const kinds = loadKinds([folder(schemaFiles), more]);
  expect([...kinds.keys()]).toEqual(["book", "issue", "paint-batch", "part", "step"]);
  expect(kindOf(kinds, "paint-batch").fields.get("part")).toMatchObject({
    type: "link",
    targets: ["part"],
    title: "Part",
  });
  expect([...small.keys()]).not.toContain("paint-batch");
});

describe("a schema file that breaks the form is refused, naming file and fault", () => {
  const text = { type: "string", description: "Text." };
  const refused = (properties: JsonObject, more: JsonObject = {}) => {
    const dir = folder({ "common.schema.json": common, "thing.schema.json": schemaOf("thing", properties, more) });
    try {
      loadKinds([dir]);
    } catch (error) {
      expect(error).toBeInstanceOf(ProgramError);
      return error instanceof Error ? error.message.replace(`${dir}/`, "") : "";
    }
    return "accepted";
  };
  const ref = (name: string, more: JsonObject = {}) => ({
    a: { $ref: `common.schema.json#/$defs/${name}`, description: "A.", ...more },
  });
  it.each<[string, JsonObject, JsonObject, string]>([
    ["a sound one", { a: text }, {}, "accepted"],
    [
      "another $id",
      { a: text },
      { $id: "thong" },
      'thing.schema.json: "$id" is "thong"; expected "thing", as the file is named',
    ],
    ["no title", { a: text }, { title: "" }, 'thing.schema.json: "title" is missing; expected a text'],
    [
      "no page",
      { a: text },
      { "x-page": "many" },
      'thing.schema.json: "x-page" is missing; expected "each" or "group"',
    ],
    ["another paper", { a: text }, { "x-paper": "none" }, 'thing.schema.json: "x-paper" may only be "table"'],
    [
      "a common property",
      { remarks: text },
      {},
      'thing.schema.json: "remarks" is a property of every record; leave it out here',
    ],
    [
      "a field named as the word of paths",
      { record: text },
      {},
      "thing.schema.json: record may not be named so: in paths the word leads from a row to its record",
    ],
    ["no description", { a: { type: "string" } }, {}, "thing.schema.json: a has no description"],
    [
      "an unknown word",
      { a: { ...text, "x-untt": "mm" } },
      {},
      'thing.schema.json: a uses "x-untt", which is no word of this form',
    ],
    ["a choice", { a: { ...text, anyOf: [] } }, {}, 'thing.schema.json: a uses "anyOf", which is no word of this form'],
    [
      "an open object",
      { a: { type: "object", description: "A.", properties: {} } },
      {},
      'thing.schema.json: a is open; expected "additionalProperties": false',
    ],
    [
      "an unknown definition",
      ref("quantities"),
      {},
      'thing.schema.json: "$ref" is "common.schema.json#/$defs/quantities"; expected a definition such as "common.schema.json#/$defs/quantity"',
    ],
    ["a quantity without unit", ref("quantity"), {}, 'thing.schema.json: a is a quantity without "x-unit"'],
    [
      "a sign of what is no quantity",
      { a: { ...text, "x-sign": "positive" } },
      {},
      'thing.schema.json: a has an "x-sign" that only a quantity may have; expected positive or not-negative',
    ],
    [
      "a sign there is not",
      ref("quantity", { "x-unit": "mm", "x-sign": "negative" }),
      {},
      'thing.schema.json: a has an "x-sign" that only a quantity may have; expected positive or not-negative',
    ],
    [
      "an upper end without its lower end",
      ref("quantity", { "x-unit": "mm", "x-not-below": "b" }),
      {},
      'thing.schema.json: a is not below "b"; expected a quantity in its unit or a day like it, beside it',
    ],
    [
      "a unit that is not listed",
      ref("quantity", { "x-unit": "furlong" }),
      {},
      'thing.schema.json: a has the unit "furlong", which is not listed',
    ],
    [
      "a date without its sort",
      ref("day"),
      {},
      'thing.schema.json: a is a date without "x-date"; expected "event", "limit" or "plan"',
    ],
    [
      "a milestone nobody defines",
      { a: { ...text, "x-due": "presure-test" } },
      {},
      'thing.schema.json: a is due at "presure-test", which is no milestone; there are order, design-approved, material-received, cutting, welding, testing-complete, pressure-test, final-inspection, release',
    ],
    [
      "a role nobody has",
      ref("link", { "x-link": ["thing"], "x-acts": ["plumber"] }),
      {},
      'thing.schema.json: a has an "x-acts" that no link may have; expected a link, and some of authorised signatory, design, document control, inspection body, purchasing, quality, shop, supplier, testing, welding coordination',
    ],
    ["a link without target", ref("link"), {}, 'thing.schema.json: a is a link without "x-link"'],
    [
      "a link to no kind",
      ref("link", { "x-link": ["weld"] }),
      {},
      'thing.schema.json: a links to "weld"; there is no kind "weld"',
    ],
    [
      "a link to no list",
      ref("link", { "x-link": ["thing#rows"] }),
      {},
      'thing.schema.json: a links to "thing#rows"; thing has no list "rows"',
    ],
    [
      "a pattern without length",
      { a: { ...text, pattern: "^a$" } },
      {},
      'thing.schema.json: a has a "pattern" without "maxLength"',
    ],
    [
      "rows that are whole from no day",
      {
        a: {
          type: "array",
          description: "A.",
          "x-row-key": "b",
          "x-whole-from": "issued",
          items: { type: "object", additionalProperties: false, required: ["b"], properties: { b: text } },
        },
      },
      {},
      'thing.schema.json: a is whole from "issued", which is no day of an event in thing',
    ],
    [
      "a list of values that is whole from a day",
      { a: { type: "array", description: "A.", "x-whole-from": "issued", items: text } },
      {},
      'thing.schema.json: a has "x-whole-from", which only a list of the record may have, whose rows have a key',
    ],
    [
      "links that are there by no day",
      { a: { type: "array", description: "A.", "x-there-by": "done", items: text } },
      {},
      'thing.schema.json: a is there by "done", which is no day of an event in thing',
    ],
    [
      "what is signed for of no day",
      { a: text },
      { "x-dated": "a" },
      'thing.schema.json: "a" of x-dated is no day of an event in thing',
    ],
    [
      "a list without items",
      { a: { type: "array", description: "A." } },
      {},
      'thing.schema.json: a is a list without "items"',
    ],
    [
      "a required stranger",
      { a: text },
      { required: ["b"] },
      'thing.schema.json: the record requires "b", which is no property of it',
    ],
    [
      "a column that is no field",
      { a: text },
      { "x-columns": ["b"] },
      'thing.schema.json: "b" of x-columns, x-label or x-number is no field of thing',
    ],
    [
      "a name with a hyphen",
      { "a-b": text },
      {},
      "thing.schema.json: a-b is no name of a property; expected letters and digits, a small letter first",
    ],
  ])("%s", (_name, properties, more, message) => {
    expect(refused(properties, more)).toBe(message);
  });
  it("also a circle of definitions, a kind defined twice, and what is no JSON", () => {
    const circle = {
      ...common,
      $defs: { ...(isObject(common["$defs"]) ? common["$defs"] : {}), ring: { $ref: "#/$defs/ring" } },
    };
    expect(() =>
      loadKinds([folder({ "common.schema.json": circle, "thing.schema.json": schemaOf("thing", ref("ring")) })]),
    ).toThrow(/in a circle/);
    expect(() => loadKinds([folder(schemaFiles), folder({ "part.schema.json": schemaOf("part", {}) })])).toThrow(
      /kind "part" is already defined/,
    );
    expect(() => loadKinds([folder({ ...schemaFiles, "thing.schema.json": "{" })])).toThrow(/cannot be read as JSON/);
    expect(() => loadKinds([])).toThrow(ProgramError);
    expect(() => loadKinds(["no/such/folder"])).toThrow(/cannot be read/);
  });
});

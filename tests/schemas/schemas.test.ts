import { describe, expect, it } from "vitest";
import { parseTarget } from "../../src/link/target.ts";
import { parseDate } from "../../src/model/dates.ts";
import { isObject, type Json, type JsonObject } from "../../src/model/json.ts";
import { measure, parseQuantity } from "../../src/model/quantity.ts";
import { unitOf } from "../../src/model/units.ts";
import { composed, definitions, objectIn, propertiesOf, propertyAt, schemas, strictAjv } from "./read-schemas.ts";

const kinds = [
  "alloy-report",
  "answered-query",
  "body-certificate",
  "book",
  "calculation-sheet",
  "coating-report",
  "consumable-batch",
  "declaration",
  "deviation",
  "dimension-check",
  "document",
  "drawing",
  "equipment",
  "fitting",
  "hardness-report",
  "heat-treatment",
  "inspection-step",
  "instrument",
  "issue",
  "joint",
  "leak-test",
  "material-certificate",
  "mill-approval",
  "nameplate",
  "ndt-personnel",
  "ndt-report",
  "nonconformity-report",
  "order-exception",
  "organisation",
  "original",
  "part",
  "person",
  "piece-mark",
  "pressure-test",
  "procedure",
  "procedure-qualification",
  "production-test",
  "reference-table",
  "repair",
  "safety-valve",
  "tube-end-group",
  "waiver",
  "weld-log",
  "welder-qualification",
  "welding-procedure",
];

const milestones = [
  "order",
  "design-approved",
  "material-received",
  "cutting",
  "welding",
  "testing-complete",
  "pressure-test",
  "coating",
  "final-inspection",
  "release",
];

const all = [...schemas.keys()].flatMap((kind) => [...propertiesOf(kind)]);
const where = ({ kind, path }: { kind: string; path: string }) => `${kind}: ${path}`;
const textOf = (schema: JsonObject, name: string) => (typeof schema[name] === "string" ? schema[name] : undefined);
const textsOf = (schema: JsonObject, name: string) =>
  Array.isArray(schema[name]) ? (schema[name] as readonly Json[]).filter((one) => typeof one === "string") : [];
const unitOfField = (schema: JsonObject) => ({
  unit: textOf(schema, "x-unit") ?? "",
  ...(schema["x-difference"] === true && { difference: true }),
});
/** Names of faulty properties, so that a failure lists them. */
const faulty = (wrong: (schema: JsonObject, property: (typeof all)[number]) => boolean) =>
  all.filter((property) => wrong(property.schema, property)).map(where);

it("there is one schema file for each kind of record", () => {
  expect([...schemas.keys()].sort()).toEqual([...kinds].sort());
});

describe.each([...schemas])("schema of %s", (kind, schema) => {
  it("says what it is, where it is printed and what a table of it shows", () => {
    expect(schema["$schema"]).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(schema["$id"]).toBe(kind);
    for (const name of ["title", "description", "x-section"]) expect(textOf(schema, name), name).toMatch(/\S/);
    expect(["each", "group"]).toContain(schema["x-page"]);
    expect(schema["additionalProperties"]).toBe(false);
    const columns = textsOf(schema, "x-columns");
    expect(columns.length).toBeGreaterThanOrEqual(3);
    expect(columns.length).toBeLessThanOrEqual(7);
    const label = textOf(schema, "x-label");
    for (const path of [...columns, ...(label === undefined ? [] : [label])])
      expect(propertyAt(kind, path), path).toBeDefined();
  });

  it("leaves the properties of every record to the shared definitions", () => {
    const own = Object.keys(objectIn(schema, "properties"));
    const shared = [...Object.keys(objectIn(definitions, "recordProperties")), "kind", "$schema"];
    expect(own.filter((name) => shared.includes(name))).toEqual([]);
  });

  it("compiles strictly, and accepts its own example and only what it knows", () => {
    const validate = strictAjv().compile(composed(kind, schema));
    const examples = schema["examples"];
    const [example] = Array.isArray(examples) ? (examples as readonly Json[]) : [];
    if (!isObject(example)) throw new Error("it has no example");
    expect(validate(example), JSON.stringify(validate.errors)).toBe(true);
    expect(Object.keys(example).length).toBeGreaterThan(3);
    expect(validate({ ...example, colour: "red" })).toBe(false);
    for (const name of ["id", ...textsOf(schema, "required")])
      expect(validate(Object.fromEntries(Object.entries(example).filter(([key]) => key !== name))), name).toBe(false);
  });

  it("has an example whose links, quantities and dates can be read", () => {
    const examples = schema["examples"];
    const [example] = Array.isArray(examples) ? (examples as readonly Json[]) : [];
    const problems: string[] = [];
    const walk = (value: Json, field: JsonObject, path: string): void => {
      if (Array.isArray(value)) {
        for (const one of value as readonly Json[]) walk(one, objectIn(field, "items"), `${path}[]`);
      } else if (isObject(value)) {
        for (const [name, one] of Object.entries(value))
          walk(one, objectIn(objectIn(field, "properties"), name), `${path}.${name}`);
      } else if (typeof value === "string") {
        const targets = textsOf(field, "x-link");
        if (targets.length > 0 && "expected" in parseTarget(value, targets)) problems.push(`${path}: link ${value}`);
        if (field["x-unit"] !== undefined && !parseQuantity(value, unitOfField(field)).ok)
          problems.push(`${path}: quantity ${value}`);
        if (field["x-date"] !== undefined && !parseDate(value).ok) problems.push(`${path}: date ${value}`);
      }
    };
    walk(example ?? null, composed(kind, schema), kind);
    expect(problems).toEqual([]);
  });
});

describe("every property", () => {
  it("is described in a sentence, unless its list is", () => {
    expect(
      faulty((schema, { item }) => !item && !/^[A-Z0-9][^\n]*\.$/.test(textOf(schema, "description") ?? "")),
    ).toEqual([]);
  });

  it("is of one plain form: no alternatives, no open object, no pattern without a longest length", () => {
    const alternatives = ["allOf", "anyOf", "oneOf", "if", "not"];
    expect(faulty((schema) => alternatives.some((word) => Object.hasOwn(schema, word)))).toEqual([]);
    expect(faulty((schema) => schema["type"] === "object" && schema["additionalProperties"] !== false)).toEqual([]);
    expect(faulty((schema) => Object.hasOwn(schema, "pattern") && typeof schema["maxLength"] !== "number")).toEqual([]);
    expect(faulty((schema, { path }) => Object.hasOwn(schema, "patternProperties") && path !== "sources")).toEqual([]);
    expect(
      faulty((schema) => !["string", "integer", "boolean", "object", "array"].includes(textOf(schema, "type") ?? "")),
    ).toEqual([]);
    expect(faulty((schema) => schema["type"] === "array" && !isObject(schema["items"]))).toEqual([]);
    const free = (schema: JsonObject) =>
      schema["type"] === "string" && !["enum", "const", "maxLength"].some((word) => Object.hasOwn(schema, word));
    expect(faulty(free)).toEqual([]);
  });

  it("that is a quantity names a listed unit, and a plausible range that can be read", () => {
    const form = textOf(objectIn(definitions, "quantity"), "pattern");
    expect(faulty((schema) => (schema["pattern"] === form) !== (schema["x-unit"] !== undefined))).toEqual([]);
    expect(
      faulty(
        (schema) =>
          schema["x-unit"] !== undefined &&
          schema["x-unit"] !== "any" &&
          unitOf(textOf(schema, "x-unit") ?? "") === undefined,
      ),
    ).toEqual([]);
    const bounds = (schema: JsonObject) =>
      textsOf(schema, "x-plausible").map((text) => parseQuantity(text, unitOfField(schema)));
    const isRange = (schema: JsonObject) => {
      const [low, high, ...more] = bounds(schema);
      const unit = schema["x-difference"] === true ? "ΔK" : (textOf(schema, "x-unit") ?? "");
      return (
        low?.ok === true &&
        high?.ok === true &&
        more.length === 0 &&
        measure(low.quantity, unit).value < measure(high.quantity, unit).value
      );
    };
    expect(faulty((schema) => schema["x-plausible"] !== undefined && !isRange(schema))).toEqual([]);
    expect(all.filter(({ schema }) => schema["x-plausible"] !== undefined).length).toBeGreaterThan(100);
  });

  it("that is a date says whether it is an event, a limit or a plan", () => {
    const forms = ["date", "day"].map((name) => textOf(objectIn(definitions, name), "pattern"));
    const isDate = (schema: JsonObject) => forms.includes(textOf(schema, "pattern"));
    expect(
      faulty((schema) => isDate(schema) && !["event", "limit", "plan"].includes(textOf(schema, "x-date") ?? "")),
    ).toEqual([]);
    expect(faulty((schema) => !isDate(schema) && schema["x-date"] !== undefined)).toEqual([]);
  });

  it("that is a link names kinds, rows or revisions there are, each once", () => {
    const exists = (target: string) => {
      const [, kind = "", sign, list = ""] = /^([a-z-]+)(?:([#@])([a-zA-Z]+))?$/.exec(target) ?? [];
      if (!schemas.has(kind) || sign === undefined) return schemas.has(kind);
      const field = propertyAt(kind, list);
      return field?.["x-row-key"] !== undefined && (sign === "#" || list === "revisions");
    };
    const isLink = (schema: JsonObject) => schema["x-link"] !== undefined;
    expect(faulty((schema) => isLink(schema) && !textsOf(schema, "x-link").every(exists))).toEqual([]);
    expect(faulty((schema) => isLink(schema) && textsOf(schema, "x-link").length === 0)).toEqual([]);
    const twice = (names: readonly string[]) => new Set(names).size !== names.length;
    expect(faulty((schema) => twice(textsOf(schema, "x-link")))).toEqual([]);
    // Rows of several lists are told apart by their names; a list of revisions beside others could not be.
    const inner = (schema: JsonObject) => textsOf(schema, "x-link").filter((target) => /[#@]/.test(target));
    const kindsOf = (schema: JsonObject) => inner(schema).map((target) => target.split(/[#@]/)[0] ?? "");
    const mixed = (schema: JsonObject) =>
      inner(schema).some((target) => target.includes("@")) && twice(kindsOf(schema));
    expect(faulty(mixed)).toEqual([]);
    const longest = objectIn(definitions, "link")["maxLength"];
    expect(faulty((schema) => isLink(schema) !== (schema["maxLength"] === longest))).toEqual([]);
  });

  it("that is owed is owed at a known milestone", () => {
    expect(
      faulty((schema) => schema["x-due"] !== undefined && !milestones.includes(textOf(schema, "x-due") ?? "")),
    ).toEqual([]);
    expect(new Set(all.map(({ schema }) => schema["x-due"]).filter(Boolean)).size).toBeGreaterThan(5);
  });

  it("that is a list of objects names the property that identifies a row, and demands it", () => {
    const rows = (schema: JsonObject) => objectIn(schema, "items");
    const isRows = (schema: JsonObject) => schema["type"] === "array" && rows(schema)["type"] === "object";
    const isPoints = (path: string) => path === "rows[].cells[].points";
    expect(
      faulty(
        (schema, { path }) =>
          isRows(schema) &&
          !isPoints(path) &&
          !textsOf(rows(schema), "required").includes(textOf(schema, "x-row-key") ?? ""),
      ),
    ).toEqual([]);
    expect(faulty((schema) => schema["x-row-key"] !== undefined && !isRows(schema))).toEqual([]);
    const known = (schema: JsonObject) => Object.keys(objectIn(schema, "properties"));
    expect(faulty((schema) => textsOf(schema, "required").some((name) => !known(schema).includes(name)))).toEqual([]);
  });
});

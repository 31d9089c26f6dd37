import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll } from "vitest";
import { loadBook, type BookOnDisk, type LoadOptions } from "../../src/load/book-files.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import type { JsonObject } from "../../src/model/json.ts";

const made: string[] = [];
afterAll(() => {
  for (const dir of made) rmSync(dir, { recursive: true, force: true });
});

export type Files = Readonly<Record<string, string | Uint8Array | JsonObject>>;

/** A folder for one test with these files, removed afterwards; objects are written as JSON. */
export function folder(files: Files): string {
  const dir = mkdtempSync(join(tmpdir(), "book-"));
  made.push(dir);
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(dir, path)), { recursive: true });
    writeFileSync(
      join(dir, path),
      typeof content === "string" || content instanceof Uint8Array ? content : JSON.stringify(content, null, 2),
    );
  }
  return dir;
}

const id = {
  type: "string",
  pattern: "^[A-Z0-9][A-Z0-9.-]{0,39}$",
  maxLength: 40,
  description: "Number of the record.",
};
const quantity = { type: "string", pattern: "^[<>]?-?[0-9]+(\\.[0-9]+)?( \\S+)?$", maxLength: 40 };
const day = { type: "string", pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", maxLength: 10 };
export const ref = (name: string, more: JsonObject): JsonObject => ({
  $ref: `common.schema.json#/$defs/${name}`,
  ...more,
});

export const common: JsonObject = {
  $defs: {
    id,
    quantity,
    day,
    link: { type: "string", minLength: 1, maxLength: 120 },
    shortText: { type: "string", minLength: 1, maxLength: 200 },
    recordProperties: {
      id: ref("id", {}),
      remarks: ref("shortText", { description: "Anything else." }),
      sources: {
        type: "object",
        description: "Where single values were read from.",
        propertyNames: { maxLength: 200 },
        patternProperties: { "^/": { type: "integer", minimum: 1 } },
        additionalProperties: false,
      },
    },
  },
};

/** A schema file of a kind with these properties. */
export const schemaOf = (name: string, properties: JsonObject, more: JsonObject = {}): JsonObject => ({
  $schema: "https://json-schema.org/draft/2020-12/schema",
  $id: name,
  title: name.charAt(0).toUpperCase() + name.slice(1),
  description: `A ${name}.`,
  "x-section": "general",
  "x-page": "each",
  type: "object",
  properties,
  additionalProperties: false,
  ...more,
});

export const schemaFiles: Files = {
  "common.schema.json": common,
  "book.schema.json": schemaOf(
    "book",
    {
      format: { type: "integer", description: "Version of the format." },
      title: ref("shortText", { description: "Title." }),
      shelves: {
        type: "array",
        description: "Shelves.",
        "x-row-key": "name",
        items: {
          type: "object",
          required: ["name", "folder"],
          properties: {
            name: { type: "string", pattern: "^[a-z0-9-]+$", maxLength: 24, description: "Name." },
            folder: ref("shortText", { description: "Folder." }),
          },
          additionalProperties: false,
        },
      },
    },
    { required: ["format", "title"] },
  ),
  "issue.schema.json": schemaOf(
    "issue",
    { revision: ref("shortText", { description: "Revision." }) },
    { required: ["revision"] },
  ),
  "part.schema.json": schemaOf(
    "part",
    {
      name: ref("shortText", { description: "Name of the part." }),
      form: { type: "string", enum: ["plate", "tube", "forging"], description: "Form of product." },
      nominalThickness: ref("quantity", {
        description: "Thickness on the drawing.",
        "x-unit": "mm",
        "x-plausible": ["0.5 mm", "200 mm"],
        "x-due": "order",
      }),
      factor: ref("quantity", { description: "A pure number.", "x-unit": "1" }),
      warming: ref("quantity", { description: "Rise of temperature.", "x-unit": "K", "x-difference": true }),
      made: ref("day", { description: "Day it was made.", "x-date": "event" }),
      pieces: { type: "integer", minimum: 1, maximum: 99, description: "Number of pieces." },
      pressureBearing: { type: "boolean", description: "Whether it bears pressure." },
      joins: {
        type: "array",
        description: "Parts beside it.",
        items: ref("link", { "x-link": ["part", "step"] }),
        uniqueItems: true,
        maxItems: 3,
        minItems: 1,
      },
      readings: {
        type: "array",
        description: "Measured thicknesses.",
        "x-row-key": "point",
        items: {
          type: "object",
          required: ["point"],
          properties: {
            point: ref("shortText", { description: "Where." }),
            value: ref("quantity", { description: "Thickness there.", "x-unit": "mm" }),
          },
          additionalProperties: false,
        },
      },
    },
    { required: ["name"], "x-label": "name", "x-columns": ["name", "form", "readings[].value"] },
  ),
  "step.schema.json": schemaOf("step", {
    records: { type: "array", description: "Evidence.", items: ref("link", { "x-link": ["part"] }) },
  }),
};

export const kinds = loadKinds([folder(schemaFiles)]);

export const bookFile: JsonObject = { kind: "book", id: "B1", format: 1, title: "Test" };
export const issueFile: JsonObject = { kind: "issue", id: "ISSUE", revision: "0" };

/** A book with these files beside a sound book.json and issue.json. */
export function load(files: Files, options?: LoadOptions): BookOnDisk {
  return loadBook(folder({ "book.json": bookFile, "issue.json": issueFile, ...files }), kinds, options);
}

/** The findings in brief: file:line:column rule message. */
export function brief(book: BookOnDisk): string[] {
  return book.findings.map(({ place, rule, message }) => {
    const { line, column } = book.locator.position(place);
    return `${place.file}:${line}:${column} ${rule} ${message}`;
  });
}

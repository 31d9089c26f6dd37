import { readFileSync } from "node:fs";
import { runInNewContext } from "node:vm";
import { describe, expect, test } from "vitest";
import { isList, isObject, type Json } from "../../../src/model/json.ts";
import { addressOfRecord } from "../../../src/publish/outline/address.ts";
import { newFindIndex } from "../../../src/publish/html/find-index.ts";
import { boilerBook, demoBook, judgedOnce, laidOutOnce, vesselBook } from "../../support/demo-book.ts";
import { propertiesOf, schemas } from "../../schemas/read-schemas.ts";

const client = readFileSync(new URL("../../../templates/client/find.js", import.meta.url), "utf8");

interface Link {
  href: string;
}
type Find = (words: string) => readonly string[];

/** The script of the find page with as much of a browser as it touches: gives the addresses it lists for some words. */
function finder(index: string): Find {
  let input: () => void = () => undefined;
  let listed: readonly Link[][] = [];
  const words = {
    value: "",
    dataset: { index: "find-index.js" },
    addEventListener: (name: string, act: () => void) => {
      if (name === "input") input = act;
      else act();
    },
  };
  const parts: Record<string, object> = {
    "find-box": {},
    "find-words": words,
    "find-count": {},
    "find-results": {
      replaceChildren: (...items: readonly { readonly links: Link[] }[]) => {
        listed = items.map(({ links }) => links);
      },
    },
  };
  const window: object = {};
  runInNewContext(index + client, {
    window,
    document: {
      getElementById: (id: string) => parts[id],
      createElement: (name: string) => {
        if (name !== "li") return { href: "", textContent: "" };
        const links: Link[] = [];
        return { links, append: (...more: readonly (Link | string)[]) => links.push(...more.filter(isLink)) };
      },
      head: { append: (script: { readonly onload: () => void }) => script.onload() },
    },
  });
  return (wanted) => {
    words.value = wanted;
    input();
    return listed.map(([link]) => link?.href ?? "");
  };
}
const isLink = (part: Link | string): part is Link => typeof part !== "string" && part.href !== "";

/** Values at a path such as `rows[].heat` of a record. */
function* valuesAt(value: Json | undefined, [step = "", ...rest]: readonly string[]): Generator<string> {
  const member = isObject(value) ? value[step.replaceAll("[]", "")] : undefined;
  for (const one of isList(member) ? member : [member])
    if (rest.length > 0) yield* valuesAt(one, rest);
    else if (one !== undefined && typeof one !== "object") yield String(one);
}

/** Of a derived kind there is no schema file: its id is all it is looked up by. */
const soughtPaths = (kind: string): readonly string[] =>
  [...(schemas.has(kind) ? propertiesOf(kind) : [])].flatMap(({ path, schema }) =>
    schema["x-sought"] === true ? [path] : [],
  );

test("what is called a number, a serial, a tag or a mark in a schema is looked up by", () => {
  const named = /(?:^|\.)(?:\w*(?:[Nn]umber|[Ss]erial)|tag|mark|certificate|batch|charge|heat|film|report)$/;
  const open = [...schemas.keys()].flatMap((kind) =>
    [...propertiesOf(kind)].flatMap(({ path, schema }) =>
      named.test(path) && schema["type"] === "string" && !("x-link" in schema) && schema["x-sought"] !== true
        ? [`${kind} ${path}`]
        : [],
    ),
  );
  // A body is looked up by its own number, at the firm.
  expect(open.filter((one) => !one.endsWith("bodyNumber"))).toEqual([]);
});

describe.each([
  ["receiver", demoBook],
  ["second vessel", vesselBook],
  ["boiler", boilerBook],
])("in the book of the %s", (_, book) => {
  test("every id and every value that a record is looked up by finds its page", { timeout: 240_000 }, async () => {
    const judged = judgedOnce(book);
    const { pages } = await laidOutOnce(book);
    const found = newFindIndex(pages);
    for (const [at, { blocks }] of pages.entries()) found.add(at, blocks);
    const find = finder(found.script());
    const missed: string[] = [];
    const answers = new Map<string, readonly string[]>();
    const pagesFor = (value: string) => {
      const known = answers.get(value) ?? find(value).map((href) => href.split("#")[0] ?? "");
      answers.set(value, known);
      return known;
    };
    for (const record of judged.graph.records) {
      const kind = judged.definitions.kinds.get(record.kind);
      if (kind === undefined || record.kind === "issue") continue;
      const { page } = addressOfRecord(kind, record);
      const values = soughtPaths(record.kind).flatMap((path) => [...valuesAt(record.value, path.split("."))]);
      for (const value of new Set([record.id, ...values])) {
        if (!pagesFor(value).includes(page)) missed.push(`${record.kind} ${record.id}: ${value}`);
      }
    }
    expect(missed).toEqual([]);
    expect(answers.size).toBeGreaterThan(300);
  });
});

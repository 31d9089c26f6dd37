import fc from "fast-check";
import { findNodeAtLocation, parseTree } from "jsonc-parser";
import { describe, expect, it } from "vitest";
import { linesOf, placesOf } from "../../src/load/places.ts";
import { pointerStep } from "../../src/model/json.ts";

const pointerOf = (path: readonly (string | number)[]) => path.map(pointerStep).join("");

function* paths(value: unknown, path: (string | number)[] = []): Generator<(string | number)[]> {
  yield path;
  if (Array.isArray(value)) for (const [index, item] of value.entries()) yield* paths(item, [...path, index]);
  else if (typeof value === "object" && value !== null)
    for (const [name, item] of Object.entries(value)) yield* paths(item, [...path, name]);
}

const blanks = fc.constantFrom("", " ", "\n  ", "\r\n\t", "   ");
/** JSON of a value with blanks between its signs as the seed has it. */
function write(value: unknown, blank: () => string): string {
  const list = (parts: readonly string[]) => parts.map((part) => blank() + part + blank()).join(",");
  if (Array.isArray(value)) return `[${list(value.map((item) => write(item, blank))) || blank()}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  return `{${list(Object.entries(value).map(([name, item]) => `${JSON.stringify(name)}${blank()}:${blank()}${write(item, blank)}`)) || blank()}}`;
}

describe("places agree with another parser", () => {
  it("of every value and every name", () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), fc.array(blanks, { minLength: 1, maxLength: 9 }), (json, seed) => {
        // Through JSON once: -0 and the like are written in one way.
        const value: unknown = JSON.parse(JSON.stringify(json));
        let turn = 0;
        const text = write(value, () => seed[turn++ % seed.length] ?? "");
        const tree = parseTree(text);
        const places = placesOf(text);
        for (const path of paths(value)) {
          const node = tree === undefined ? undefined : findNodeAtLocation(tree, path);
          expect(places.value(pointerOf(path))).toEqual({
            start: node?.offset,
            end: (node?.offset ?? 0) + (node?.length ?? 0),
          });
          const name = node?.parent?.type === "property" ? node.parent.children?.[0] : undefined;
          expect(places.name(pointerOf(path))).toEqual(name && { start: name.offset, end: name.offset + name.length });
          // The first member or item of an object or list begins behind its bracket, so the bracket belongs to the value itself.
          expect(places.pointerAt(node?.offset ?? -1)).toBe(pointerOf(path));
          if (name !== undefined) expect(places.pointerAt(name.offset)).toBe(pointerOf(path));
        }
      }),
    );
  });
});

it("gives the nearest value around what is absent", () => {
  const text = '{"a": {"b": [1]}}';
  const places = placesOf(text);
  const at = (pointer: string) => text.slice(places.value(pointer).start, places.value(pointer).end);
  expect(at("/a/c")).toBe('{"b": [1]}');
  expect(at("/a/b/7")).toBe("[1]");
  expect(at("/a/b/0/x")).toBe("1");
  expect(at("/x/y")).toBe(text);
  expect(places.name("/a/c")).toBeUndefined();
});

it("counts the last of two members of one name, as JSON.parse does", () => {
  const text = '{"a": 1, "a": {"b": 2}}';
  expect(placesOf(text).value("/a/b")).toEqual({ start: 20, end: 21 });
});

describe("lines", () => {
  it("count from one, in UTF-16 units, whatever ends them", () => {
    const text = '{\r\n  "ä": "°C",\n  "b": 1\n}';
    const lines = linesOf(text);
    const places = placesOf(text);
    expect(lines.position(places.value("/ä"))).toEqual({ line: 2, column: 8, length: 4 });
    expect(lines.position(places.value("/b"))).toEqual({ line: 3, column: 8, length: 1 });
    expect(lines.position(places.value(""))).toEqual({ line: 1, column: 1, length: 1 });
    expect([1, 2, 3, 4, 5].map(lines.line)).toEqual(["{", '  "ä": "°C",', '  "b": 1', "}", undefined]);
  });
});

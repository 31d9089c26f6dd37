import { expect, test } from "vitest";
import { ownChoice } from "../../src/model/basis.ts";
import { findingKey } from "../../src/model/finding-key.ts";
import { newFinding } from "../../src/model/new-finding.ts";

const by = { id: "used", basis: ownChoice("of this test") };
const spot = { subject: null, place: { file: "book.json", pointer: "" } };
const said = (message: string, about: string) =>
  newFinding(by, spot, { key: findingKey("used", "book"), message, why: "w", hint: "h", about }).digest;

test("another wording takes no answer away; another value does", () => {
  expect(said("the plate is 8 mm", "8 mm")).toBe(said("8 mm is the thickness of the plate", "8 mm"));
  expect(said("the plate is 8 mm", "8 mm")).not.toBe(said("the plate is 8 mm", "9 mm"));
});

test("what an answer rests on has to be said", () => {
  // @ts-expect-error neither a digest nor what it is taken of
  expect(() => newFinding(by, spot, { key: findingKey("used", "book"), message: "m", why: "w", hint: "h" })).toThrow();
});

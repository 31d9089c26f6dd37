import { describe, expect, it } from "vitest";
import type { JsonObject } from "../../src/model/json.ts";
import { load } from "./folder.ts";

const part: JsonObject = { kind: "part", id: "P01", name: "shell" };
/** Message and hint of each fault of one part with these properties. */
const faults = (properties: JsonObject | string) =>
  load({ "p.json": typeof properties === "string" ? properties : { ...part, ...properties } }).findings.map(
    ({ message, hint }) => `${message} → ${hint}`,
  );

describe("faults against a schema are said in plain words", () => {
  const mm = "a number and a unit of length (mm, m, cm, in or µm)";
  it.each<[JsonObject, string]>([
    [
      { nominalThickness: "1,85 mm" },
      `"nominalThickness" is "1,85 mm"; expected ${mm}, such as "14.0 mm" → a comma may be a decimal point or part the thousands: write the digits with a decimal point only`,
    ],
    [
      { nominalThickness: "8.0mm" },
      `"nominalThickness" is "8.0mm"; expected ${mm}, such as "14.0 mm" → leave one space between number and unit`,
    ],
    [
      { nominalThickness: null },
      `"nominalThickness" is null; expected text: ${mm}, such as "14.0 mm" → leave the property out if there is no value`,
    ],
    [
      { factor: 0.85 },
      '"factor" is 0.85; expected text: a number without unit, or in % or ppm, such as "0.85" → write "0.85" (text): the digits are evidence',
    ],
    [
      { made: "09.03.2026" },
      '"made" is "09.03.2026"; expected a day, such as 2026-03-09 → day and month are not told apart here: state the date as 2026-03-09',
    ],
    [
      { made: "2026-03-09T10:00Z" },
      '"made" is "2026-03-09T10:00Z"; expected a day, such as 2026-03-09 → leave the time out',
    ],
    [
      { form: "palte" },
      '"form" is "palte"; expected one of "plate", "tube", "forging" → write "plate", if that is meant',
    ],
    [{ form: "casting" }, '"form" is "casting"; expected one of "plate", "tube", "forging" → write one of these'],
    [{ pieces: 0 }, '"pieces" is 0; expected at least 1 → correct the number'],
    [{ pieces: 100 }, '"pieces" is 100; expected at most 99 → correct the number'],
    [{ pieces: 1.5 }, '"pieces" is 1.5; expected a whole number, such as 1 → write 1'],
    [{ pieces: "2" }, '"pieces" is "2"; expected a whole number, such as 1 → write 1'],
    [{ pressureBearing: "yes" }, '"pressureBearing" is "yes"; expected true or false, such as true → write true'],
    [{ name: 7 }, '"name" is 7; expected text, such as "…" → write it as text: "7"'],
    [{ name: "" }, '"name" is empty; expected text → leave the property out if there is no value, or write "…"'],
    [
      { name: "x".repeat(201) },
      '"name" has 201 signs; expected at most 200 → shorten it, or put the rest into "remarks"',
    ],
    [
      { joins: "part:P02" },
      '"joins" is "part:P02"; expected a list, such as [ … ] → write a list, even for one entry: ["part:P02"]',
    ],
    [{ joins: [] }, '"joins" has too few entries; expected at least 1 → add them, or leave the property out'],
    [
      { joins: ["part:A", "part:B", "part:C", "part:D"] },
      '"joins" has 4 entries; expected at most 3 → put what is alike into one entry, and remove the surplus',
    ],
    [
      { joins: ["part:A", "part:B", "part:A"] },
      '"joins" holds one entry twice, at 0 and 2 counted from 0 → remove one of them',
    ],
    [{ joins: [3] }, '"joins[0]" is 3; expected text: the id of another record, such as "…" → write it as text: "3"'],
    [{ readings: [{ value: "8.0 mm" }] }, '"readings[0]" has no "point" → add "point": "…"'],
    [{ readings: ["8.0 mm"] }, '"readings[8.0 mm]" is "8.0 mm"; expected an object, such as { … } → write { … }'],
    [{ nominalThicknes: "8.0 mm" }, '"nominalThicknes" is no property of the part → write "nominalThickness"'],
    [{ NominalThickness: "8.0 mm" }, '"NominalThickness" is no property of the part → write "nominalThickness"'],
    [
      { welder: "W07" },
      '"welder" is no property of the part → known and unused here: remarks, sources, form, nominalThickness, factor, warming, made, pieces, pressureBearing, joins, readings, $schema',
    ],
    [{ readings: [{ point: "A", valeu: "8.0 mm" }] }, '"valeu" is no property of "readings[A]" → write "value"'],
    [
      { sources: { thickness: 2 } },
      '"thickness" is no property of "sources" → write a place in the record, such as "/thickness"',
    ],
    [{ sources: { "/thickness": 0 } }, '"sources./thickness" is 0; expected at least 1 → correct the number'],
    [
      { sources: { [`/${"x".repeat(200)}`]: 1 } },
      `"sources" has the name "/${"x".repeat(78)}…", which is not of the form expected → write a place in the record, such as "/thickness"`,
    ],
  ])("%j", (properties, said) => {
    const [found, ...others] = faults(properties);
    expect(sortNames(found)).toBe(sortNames(said));
    expect(others).toEqual([]);
  });

  it("of a number where a quantity is wanted keep the digits of the file", () => {
    expect(faults('{"kind": "part", "id": "P01", "name": "a", "nominalThickness": 14.0}')).toEqual([
      `"nominalThickness" is 14.0; expected text: ${mm}, such as "14.0 mm" → write "14.0 mm" (text with unit, as the document states it): the digits are evidence`,
    ]);
    expect(faults('{"kind": "part", "id": "P01", "name": "a", "warming": 5}')[0]).toMatch(/write "5 K"/);
  });
  it("of what is missing say what it is for", () => {
    const [finding] = load({ "p.json": { kind: "part", id: "P01" } }).findings;
    expect(finding).toMatchObject({
      message: 'the part has no "name"',
      why: "the schema says: Name of the part",
      hint: 'add "name": "…"',
      accuses: ["part:P01"],
      key: "record-schema|part:P01|name",
    });
  });
  it("are said once for each place", () => {
    expect(faults({ nominalThickness: "x".repeat(50) })).toHaveLength(1);
    expect(faults({ nominalThickness: 1, form: 2, pieces: "x" })).toHaveLength(3);
  });
});

/** The list of known names follows the schema; the order in which it is written is not what is tested. */
const sortNames = (text: string | undefined) =>
  text?.replace(/(?<=unused here: ).*$/, (names) => names.split(", ").sort().join(", "));

describe("a fault throws doubt", () => {
  const accused = (properties: JsonObject) =>
    load({ "p.json": { ...part, ...properties } }).findings.map(({ accuses }) => accuses);
  it("on its own place, by its address", () => {
    expect(accused({ readings: [{ point: "A" }, { point: "B", value: 8 }] })).toEqual([["part:P01/readings/1/value"]]);
  });
  it("on the nearest unused name too, so that no gap is reported for it", () => {
    expect(accused({ nominalThicknes: "8.0 mm" })).toEqual([["part:P01/nominalThicknes", "part:P01/nominalThickness"]]);
    expect(accused({ nominalThickness: "8.0 mm", nominalThicknes: "8.0 mm" })).toEqual([["part:P01/nominalThicknes"]]);
    expect(accused({ readings: [{ point: "A", valu: "1.0 mm" }] })).toEqual([
      ["part:P01/readings/0/valu", "part:P01/readings/0/value"],
    ]);
  });
  it("on the row that misses its name", () => {
    expect(accused({ readings: [{ value: "8.0 mm" }] })).toEqual([["part:P01/readings/0"]]);
  });
});

it("names of JavaScript's own objects are names like others", () => {
  const text =
    '{"kind": "part", "id": "P01", "name": "a", "__proto__": {"form": "plate"}, "constructor": 1, "toString": 2}';
  const { findings, records } = load({ "p.json": text });
  expect(findings.map(({ message }) => message)).toEqual(
    ["__proto__", "constructor", "toString"].map((name) => `"${name}" is no property of the part`),
  );
  expect(records.find(({ kind }) => kind === "part")?.value["form"]).toBeUndefined();
  expect(({} as JsonObject)["form"]).toBeUndefined();
});

describe("many faults", () => {
  const broken = (count: number) => ({
    "p.json": {
      kind: "part",
      records: Array.from({ length: count }, (_, index) => ({ id: `P${index}`, name: 1, form: 2 })),
    },
  });
  it("are listed up to fifty a file, then counted, and accuse their records", () => {
    const { findings, records } = load(broken(40));
    expect(findings).toHaveLength(51);
    const last = findings.at(-1);
    expect(last).toMatchObject({
      message: "the file has 30 more faults against the schema of part",
      key: "record-schema|p.json|more",
    });
    expect(last?.accuses).toHaveLength(15);
    expect(last?.accuses[0]).toBe("part:P25");
    expect(records.filter(({ faulty }) => faulty)).toHaveLength(40);
  });
  it("that are just fifty are all listed", () => {
    expect(load(broken(25)).findings).toHaveLength(50);
  });
  it("in one record of very many values are said up to the first", () => {
    const joins = Array.from({ length: 250_000 }, () => 1);
    expect(load({ "p.json": { ...part, joins } }).findings).toHaveLength(1);
  });
});

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Change } from "../support/changes.ts";
import { boilerBook, demoBook, judgeChanged, newRoots, sound, soundBoiler } from "../support/demo-book.ts";

/** Honest work that a stricter reading would refuse: the book is changed so, and nothing may come of it. */
const receiver: readonly (readonly [string, ...Change[]])[] = [
  [
    "a test gauge of a wider range than a boiler's may have",
    ...wider("PG-03", 0),
    ...wider("PG-04", 1),
    { set: "calculation-sheet:CAL-15", at: "/results/3/value", to: "1.20 bar" },
  ],
  ["a gauge calibrated for twelve months", valid("PG-03", "2027-05-03")],
  [
    "a new valve whose certificate states one opening and no closing",
    { set: "safety-valve:SV-01", at: "/bench/readings", to: [{ number: 1, pop: "11.05 bar" }] },
  ],
  ["a recorder as second gauge", { set: "instrument:PG-04", at: "/type", to: "recorder" }],
  [
    "a filler named with and without the number of its standard",
    { set: "consumable-batch:B-2217", at: "/designation", to: "G 42 4 M21 3Si1" },
  ],
  [
    "a filler named to another standard, with the first beside it",
    { set: "consumable-batch:B-2217", at: "/designation", to: "AWS A5.18 ER70S-6" },
    { set: "consumable-batch:B-2217", at: "/classifications", to: ["EN ISO 14341-A - G 42 4 M21 3Si1"] },
  ],
  [
    "a yield strength that rounds to its limit",
    { set: "material-certificate:CRT-001", at: "/rows/0/tensile/0/yieldStrength", to: "264.6 MPa" },
  ],
];

const boiler: readonly (readonly [string, ...Change[]])[] = [
  [
    "visual testers without a certificate",
    { remove: "inspection-step:ITP-060", at: "/records/8" },
    { remove: "inspection-step:ITP-060", at: "/records/0" },
    { remove: "ndt-personnel:NC-N1-VT" },
    { remove: "ndt-personnel:NC-N3-VT" },
  ],
  [
    "magnetic tests by level 1 under the eyes of a level 3",
    { set: "ndt-personnel:NC-N1-MT", at: "/level", to: "1" },
    ...["MT-01", "MT-02", "MT-03", "MT-04", "MT-05"].map((id) => ({
      set: `ndt-report:${id}`,
      at: "/supervisor",
      to: "N3",
    })),
  ],
  ["films of class A", { set: "ndt-report:RT-05", at: "/radiography/techniqueClass", to: "A" }],
  [
    "parts without a corrosion allowance of their own, where the equipment states it for all",
    ...partsWith("corrosionAllowance").map((id) => ({ remove: `part:${id}`, at: "/corrosionAllowance" })),
  ],
  ["a limiter of high water that does not lock out", { set: "fitting:FT-12", at: "/lockOut", to: false }],
];

/** Parts of the boiler that state a value. */
function partsWith(field: string): readonly string[] {
  return [...(soundBoiler().graph.byKind.get("part")?.values() ?? [])].flatMap(({ id, value }) =>
    Object.hasOwn(value, field) ? [id] : [],
  );
}

interface Written {
  readonly book: string;
  readonly title: string;
  /** Records that are added have no papers of their own: they name pages of their neighbours. */
  readonly sharesPages?: true;
  readonly changes: readonly Change[];
}

/** Cases of whole records. */
const written = JSON.parse(readFileSync(join(import.meta.dirname, "honest.json"), "utf8")) as readonly Written[];
const writtenOf = (name: string) =>
  written.flatMap(({ book, title, changes }) => (book === name ? [[title, ...changes] as const] : []));

/** A gauge of 60 bar, as registered, on the report of the test and on the sheet of its hold. */
function wider(id: string, index: number): readonly Change[] {
  return [
    { set: `instrument:${id}`, at: "/range/maximum", to: "60 bar" },
    { set: "pressure-test:HYD-01", at: `/gauges/${index}/range`, to: "60 bar" },
    { set: "calculation-sheet:CAL-15", at: `/inputs/${6 + index}/value`, to: "60 bar" },
  ];
}
function valid(id: string, day: string): Change {
  return { set: `instrument:${id}`, at: "/calibrations/0/validTo", to: day };
}

/** What is said of pages that two records share. */
const ofPages: readonly string[] = ["one-paper", "compared-after"];
const sharing = new Set(written.flatMap(({ title, sharesPages }) => (sharesPages === true ? [title] : [])));

describe.each([
  ["air receiver", demoBook, () => sound, [...receiver, ...writtenOf("air receiver")]],
  ["boiler", boilerBook, soundBoiler, [...boiler, ...writtenOf("boiler")]],
] as const)("honest work in the book of the %s is not refused", (_, book, before, cases) => {
  test.each(cases.map(([name, ...changes]) => [name, changes] as const))("%s", (title, changes) => {
    const { judged, fatal } = judgeChanged(book, changes);
    expect(fatal).toEqual([]);
    const all = judged === null ? [] : newRoots(judged, before());
    const found = all.filter(({ rule }) => !(sharing.has(title) && ofPages.includes(rule)));
    expect(found.map(({ key, message }) => `${key}: ${message}`)).toEqual([]);
    // Who says so in vain hides what another change would bring.
    expect(all.some(({ rule }) => ofPages.includes(rule))).toBe(sharing.has(title));
  });
});

test("a pressure test that was stopped and rejected is none of those that plate and papers speak of", () => {
  const value = sound.graph.byKind.get("pressure-test")?.get("HYD-01")?.value;
  const stopped = {
    ...value,
    kind: "pressure-test",
    id: "HYD-00",
    date: "2026-06-22",
    testPressure: "11 bar",
    result: "rejected",
  };
  const add = (result: string): Change => ({ file: "testing/more.json", add: { ...stopped, result } });
  const foundOf = (change: Change) =>
    new Set(newRoots(judgeChanged(demoBook, [change]).judged ?? sound, sound).map(({ rule }) => rule));
  const spoken = ["test-date-agrees", "test-pressure-agrees", "test-pressure-reached"];
  expect(spoken.filter((rule) => foundOf(add("rejected")).has(rule))).toEqual([]);
  // Had it been accepted, the plate would state another pressure than it.
  expect([...foundOf(add("accepted"))]).toContain("test-pressure-agrees");
});

test("a pressure test that was broken off owes neither times nor an examination, and is to be rejected", () => {
  const value = sound.graph.byKind.get("pressure-test")?.get("HYD-01")?.value;
  const { testPressure, pumpIsolated, holdStart, holdEnd, permanentSet, visualExamination, pumpedVolume, ...begun } =
    value ?? {};
  expect([testPressure, pumpIsolated, holdStart, holdEnd, permanentSet, visualExamination, pumpedVolume]).not.toContain(
    undefined,
  );
  const stopped = {
    ...begun,
    kind: "pressure-test",
    id: "HYD-00",
    date: "2026-06-22",
    stopped: "gasket of the manhole leaked at 11 bar",
  };
  const foundOf = (result: string) => {
    const add: Change = { file: "testing/more.json", add: { ...stopped, result } };
    return newRoots(judgeChanged(demoBook, [add]).judged ?? sound, sound).map(({ rule, message }) => [rule, message]);
  };
  const asked = ["recorded-hold", "pressure-hold", "hold-drift", "examination-during-test", "examination-pressure"];
  const rejected = foundOf("rejected");
  expect(rejected.filter(([rule = ""]) => ["missing", "stopped-test-rejected", ...asked].includes(rule))).toEqual([]);
  expect(foundOf("accepted")).toContainEqual([
    "stopped-test-rejected",
    "pressure test HYD-00 was broken off, and its result is accepted",
  ]);
});

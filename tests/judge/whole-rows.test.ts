import { describe, expect, test } from "vitest";
import { milestoneDays } from "../../src/model/milestone-days.ts";
import { owedItems } from "../../src/owed/items.ts";
import type { Change } from "../support/changes.ts";
import { demoBook, interimBook, judgeChanged } from "../support/demo-book.ts";

// What a certificate must report of a heat: EN 10204 asks for the results of the tests the order's specification demands, and
// EN 10028-2 limits each of these elements by name (from memory).
const certificate = "material-certificate:CRT-003";
const heat = "material certificate CRT-003, row 84713";

const missed = (book: string, changes: readonly Change[]) => {
  const { judged } = judgeChanged(book, changes);
  if (judged === null) throw new Error("the book was not judged");
  const findings = judged.findings.filter(({ message, severity }) => severity !== "note" && message.includes("84713"));
  const owed = owedItems(judged).filter(({ says }) => says.includes("84713"));
  return { judged, findings, owed };
};

const cut = (at: string): Change => ({ remove: certificate, at });
const setTo = (at: string, to: unknown): Change => ({ set: certificate, at, to });

/** The interim book before any material was entered as received. */
const early: readonly Change[] = ["2", "3", "4", "5", "6"].flatMap((index): Change[] => [
  { remove: "issue:ISSUE", at: `/milestones/${index}/reached` },
]);

const cases: readonly (readonly [string, readonly Change[], string])[] = [
  ["carbon", [cut("/rows/0/chemistry/0")], `${heat} has no chemistry with element C`],
  ["its figure alone", [cut("/rows/0/chemistry/0/value")], `${heat}, chemistry C has no value`],
  [
    "three elements",
    ["0", "0", "0"].map((index) => cut(`/rows/0/chemistry/${index}`)),
    `${heat} lacks chemistry with element C, Si and Mn`,
  ],
  [
    "two elements and two figures",
    [
      cut("/rows/0/chemistry/0"),
      cut("/rows/0/chemistry/0"),
      cut("/rows/0/chemistry/0/value"),
      cut("/rows/0/chemistry/1/value"),
    ],
    `${heat} lacks chemistry with element C and Si; value of chemistry Mn and P`,
  ],
  [
    "the whole analysis",
    [cut("/rows/0/chemistry")],
    `${heat} lacks chemistry with element C, Si, Mn, P, S, N, Al, Cr, Cu, Mo, Ni, Nb, Ti and V`,
  ],
  ["one result of the tensile test", [cut("/rows/0/tensile/0/elongation")], `${heat}, tensile 1041 has no elongation`],
  [
    "all results of the tensile test",
    [setTo("/rows/0/tensile/0", { test: "1041", direction: "transverse" })],
    `${heat} lacks yield strength, tensile strength and elongation of tensile 1041`,
  ],
  ["the whole tensile test", [cut("/rows/0/tensile")], `${heat} has no tensile`],
  [
    "all tests",
    [cut("/rows/0/tensile"), cut("/rows/0/chemistry")],
    `${heat} lacks chemistry with element C, Si, Mn, P, S, N, Al, Cr, Cu, Mo, Ni, Nb, Ti and V; tensile`,
  ],
];

describe("what a heat lacks is one gap, and owed at once", () => {
  const once = ["carbon", "three elements", "one result of the tensile test"];
  const states = [
    { state: "interim, before the material is received", book: interimBook, before: early, shown: cases },
    { state: "interim", book: interimBook, before: [], shown: cases.filter(([name]) => once.includes(name)) },
    { state: "final", book: demoBook, before: [], shown: cases.filter(([name]) => once.includes(name)) },
  ];
  for (const { state, book, before, shown } of states)
    test.each(shown)(`${state}: %s`, (_name, changes, message) => {
      const { findings, owed } = missed(book, [...before, ...changes]);
      expect(findings.map(({ severity, message: said, due }) => ({ severity, said, due }))).toEqual([
        { severity: "gap", said: message, due: null },
      ]);
      expect(owed.map(({ standing, says, milestone }) => ({ standing, says, milestone }))).toEqual([
        { standing: "due", says: message, milestone: null },
      ]);
    });

  test("the certificate that is not there is still not due", () => {
    const { judged, owed } = missed(interimBook, [...early, { remove: "piece-mark:PM-01" }]);
    expect(milestoneDays(judged.issue).find(({ name }) => name === "material-received")?.reached).toBe(false);
    expect(owed).toEqual([]);
  });

  test("without a day on the paper its milestone says when", () => {
    const { findings, owed } = missed(interimBook, [...early, cut("/issued"), cut("/rows/0/chemistry/0")]);
    expect(findings).toEqual([]);
    expect(owed.map(({ standing, milestone }) => [standing, milestone?.name])).toEqual([
      ["not due", "material-received"],
    ]);
  });

  test("a value out of limits beside it is a finding of its own, and what is there is compared", () => {
    const { judged, findings } = missed(demoBook, [
      setTo("/rows/0/chemistry/4/value", "0.04 %"),
      cut("/rows/0/chemistry/0"),
    ]);
    expect(findings.map(({ rule, severity }) => [rule, severity]).sort()).toEqual([
      ["chemistry-limits", "nonconformity"],
      ["missing", "gap"],
    ]);
    const outcome = judged.outcomes.find(
      ({ definition, subject }) => definition === "chemistry-limits" && subject?.id === "CRT-003#84713",
    );
    expect(outcome?.verdict).toBe("failed");
    expect(outcome?.compared?.some(({ name }) => name === "Mn")).toBe(true);
    expect(outcome?.compared?.some(({ name }) => name === "C")).toBe(false);
  });

  test("two heats of one paper are two gaps", () => {
    const { judged } = missed(demoBook, [
      cut("/rows/0/chemistry"),
      cut("/rows/1/tensile/0/elongation"),
      cut("/rows/1/tensile/0/yieldStrength"),
    ]);
    expect(judged.findings.filter(({ rule }) => rule === "missing").map(({ key }) => key)).toEqual([
      "missing|material-certificate:CRT-003|rows (84713) values",
      "missing|material-certificate:CRT-003|rows (84721) values",
    ]);
  });

  test("a gap that was accepted stays apart from what is missed later", () => {
    const one = missed(demoBook, [cut("/rows/0/chemistry/0")]).findings[0];
    const two = missed(demoBook, [cut("/rows/0/chemistry/0"), cut("/rows/0/chemistry/0")]).findings[0];
    // The digest of a row's gap is that of what it lacks: an exception for one list does not answer for another.
    const three = missed(demoBook, [cut("/rows/0/chemistry/0"), cut("/rows/0/chemistry/0"), cut("/rows/0/chemistry/0")])
      .findings[0];
    expect(two?.key).toBe(three?.key);
    expect(two?.key).not.toBe(one?.key);
    expect(two?.digest).not.toBe(three?.digest);
  });
});

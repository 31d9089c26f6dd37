import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import { isList, isObject, type JsonObject } from "../../src/model/json.ts";
import type { BookRecord } from "../../src/model/record.ts";
import { milestoneDays } from "../../src/model/milestone-days.ts";
import { announcedOf, announcedWords, limitWords } from "../../src/owed/announced.ts";
import { owedItems } from "../../src/owed/items.ts";
import { owedList, type Asked } from "../../src/owed/list.ts";
import { owedSheet } from "../../src/owed/sheet.ts";
import { owedText } from "../../src/owed/text.ts";
import { layOut } from "../../src/pipeline.ts";
import { demoBook, interimBook, judgedOnce, judgedWith, readOnce, sound } from "../support/demo-book.ts";

const interim = judgedOnce(interimBook);

/** The book with one record changed, or (null) taken out. */
const changed = (book: string, address: string, change: (value: JsonObject) => JsonObject | null): JudgedBook =>
  judgedWith(
    book,
    readOnce(book).records.flatMap((record): BookRecord[] => {
      if (`${record.kind}:${record.id}` !== address) return [record];
      const value = change(record.value);
      return value === null ? [] : [{ ...record, value }];
    }),
  );

const without =
  (...fields: readonly string[]) =>
  (value: JsonObject): JsonObject =>
    Object.fromEntries(Object.entries(value).filter(([name]) => !fields.includes(name)));

const rowsOf = (value: JsonObject, list: string): readonly JsonObject[] => {
  const rows = value[list];
  return isList(rows) ? rows.filter(isObject) : [];
};

const listOf = (judged: JudgedBook, asked: Asked = {}) =>
  owedList(owedItems(judged), milestoneDays(judged.issue), asked);
const heldAgainst = (judged: JudgedBook, asked: Asked = {}) => announcedOf(judged, listOf(judged, asked));
const saidOf = (judged: JudgedBook, asked: Asked = {}) =>
  heldAgainst(judged, asked).map(({ announced, thing }) => [thing, announced.of, ...announced.limits.map(limitWords)]);

describe("the pressure test", () => {
  const limits = [
    // By hand: 1.43 · 11 bar = 15.73 bar, so that the specified 15.8 bar count; 1.06 · 15.73 bar = 16.6738 bar, rounded down.
    "pressure needed at the top: at least 15.80 bar",
    "highest pressure at the top: at most 16.67 bar",
    "what a gauge must read more for each metre it stands below the top, with water: 0.0981 bar/m",
    "time at the test pressure: at least 30 min",
    "time between two readings: at most 5 min",
    "temperature of the test medium: at least 10 °C",
    // By hand: 1.5 · 15.8 bar and 4 · 15.8 bar.
    "end of the scale of a gauge: at least 23.7 bar",
    "span of the scale of a gauge: at most 63.2 bar",
    "pressure at which every joint is looked at: at least 11 bar",
  ];

  test("is announced for this vessel, to who makes it and for its milestone", () => {
    const [held] = heldAgainst(interim).filter(({ announced }) => announced.definition === "test-limits");
    expect([held?.thing, held?.title, held?.announced.of]).toEqual([
      "equipment TQ423-01",
      "compressed-air receiver",
      "pressure test HYD-01",
    ]);
    expect([held?.item.owner, held?.item.milestone?.name, held?.item.milestone?.day]).toEqual([
      "quality",
      "pressure-test",
      "2026-06-23",
    ]);
    expect(held?.announced.limits.map(limitWords)).toEqual(limits);
  });

  test("is so until it was measured: a record without readings is no measurement, nor is one that lacks a reading", () => {
    for (const change of [
      without("readings"),
      (value: JsonObject): JsonObject => ({ ...value, readings: [] }),
      (value: JsonObject): JsonObject => ({
        ...value,
        readings: rowsOf(value, "readings").map((row, index) => (index === 3 ? without("gaugeA")(row) : row)),
      }),
    ]) {
      const said = saidOf(changed(demoBook, "pressure-test:HYD-01", change)).filter(
        ([, , first]) => first === limits[0],
      );
      expect(said.map(([thing]) => thing)).toEqual(["equipment TQ423-01"]);
    }
    expect(sound.announced).toEqual([]);
  });

  test("what cannot be computed yet is said so, with what is missing for it; the rest stands", () => {
    const judged = changed(interimBook, "equipment:TQ423-01", without("testPressure"));
    const [held] = heldAgainst(judged).filter(({ announced }) => announced.definition === "test-limits");
    const words = held?.announced.limits.map(limitWords) ?? [];
    expect(words[0]).toBe("pressure needed at the top: not known yet");
    expect(words[1]).toBe(limits[1]);
    expect(words[6]).toBe("end of the scale of a gauge: not known yet");
    expect(held?.announced.because).toEqual(["equipment TQ423-01 has no test pressure PT"]);
    expect(held === undefined ? "" : announcedWords(held.announced)).toContain(
      "equipment TQ423-01 has no test pressure PT",
    );
  });

  test("a waiver takes the test back: nobody owes it, and nothing is announced", () => {
    const records = readOnce(demoBook).records.filter(({ kind }) => kind !== "pressure-test");
    const bare = judgedWith(demoBook, records);
    const gap = bare.findings.find(({ key }) => key === "missing|pressure-test:HYD-01");
    expect(bare.announced.map(({ definition }) => definition)).toEqual(["test-limits"]);
    const waiver: BookRecord = {
      kind: "waiver",
      id: "WV-90",
      file: "waivers.json",
      pointer: "",
      faulty: false,
      value: {
        id: "WV-90",
        answers: [{ finding: gap?.key ?? "", digest: gap?.digest ?? "" }],
        reason: "tested by another method",
        by: "E1",
        authority: "order PW-1187",
        date: "2026-07-15",
      },
    };
    const waived = judgedWith(demoBook, [...records, waiver]);
    expect(waived.findings.find(({ key }) => key === gap?.key)?.exception).toBe("waiver:WV-90");
    expect(saidOf(waived)).toEqual([]);
  });
});

describe("tests of joints", () => {
  test("state the length of each joint and method that has not been tested, and no other", () => {
    const radiographs = heldAgainst(interim).filter(
      ({ announced }) => announced.of === "NDT report with method RT" && announced.definition === "tested-length",
    );
    // By hand: a tenth of 3745 mm. L1, L2 and C1 have been radiographed.
    expect(radiographs.map(({ thing, announced }) => [thing, announced.limits.slice(0, 2).map(limitWords)])).toEqual(
      ["joint C2", "joint C3"].map((thing) => [
        thing,
        ["length to be tested: at least 374.5 mm", "quality level it is judged to, or a stricter one: C"],
      ]),
    );
    expect(new Set(radiographs.map(({ item }) => item.owner))).toEqual(new Set(["testing"]));
  });

  test("state the wire that the films must show, by the thickness of each joint and how they are exposed", () => {
    const wires = (judged: JudgedBook) =>
      heldAgainst(judged)
        .filter(({ announced }) => announced.definition === "image-quality")
        .map(({ thing, announced }) => [thing, ...announced.limits.map(limitWords)]);
    // From memory, EN ISO 17636-1, annex B, class B: over 6 to 8 mm W15; through twice 8 mm W14 and W13.
    const asked = [
      "single wall, indicator on the source side: at least W15",
      "double wall, indicator on the film side: at least W14",
      "double wall, double image, indicator on the source side: at least W13",
    ].map((words) => `wire that must be seen, a higher number being a thinner wire: ${words}`);
    expect(wires(interim)).toEqual([
      ["joint C2", ...asked],
      ["joint C3", ...asked],
    ]);
    // A row that states no wire is a radiograph that is still to be read, of its joint alone.
    const unread = changed(demoBook, "ndt-report:RT-02", (value) => ({
      ...value,
      rows: rowsOf(value, "rows").map((row) => without("wire")(row)),
    }));
    expect(wires(unread)).toEqual([["joint C1", ...asked]]);
    // Without its thicknesses nothing is known of the wire, and why is said.
    const bare = changed(interimBook, "joint:C3", without("thicknesses"));
    expect(wires(bare)[1]?.map((words) => words.split(": ").at(-1))).toEqual([
      "joint C3",
      ...asked.map(() => "not known yet"),
    ]);
  });

  test("stand until that joint has its tested length: a row without one is no measurement", () => {
    const judged = changed(demoBook, "ndt-report:RT-03", (value) => ({
      ...value,
      rows: rowsOf(value, "rows").map((row) => without("length")(row)),
    }));
    const said = judged.announced.map(({ subject, limits }) => [subject.id, ...limits.slice(0, 1).map(limitWords)]);
    const report = readOnce(demoBook).records.find(({ id, kind }) => kind === "ndt-report" && id === "RT-03");
    const joints = new Set(rowsOf(report?.value ?? {}, "rows").map((row) => row["joint"]));
    expect(joints.size).toBeGreaterThan(0);
    expect(new Set(said.map(([id]) => id))).toEqual(joints);
  });
});

describe("other measurements", () => {
  test("a wall, a safety valve on the bench, and a planned dimension are told what they must show", () => {
    const wall = changed(demoBook, "part:P01", without("measuredThickness"));
    const shell = wall.computed.find(
      ({ calculation, subject }) => calculation.id === "cylindrical-shell" && subject.id === "P01",
    );
    const steps = shell?.state === "done" ? shell.steps : [];
    const valueOf = (symbol: string) => steps.find(({ step }) => step.symbol === symbol)?.value ?? Number.NaN;
    expect(saidOf(wall)).toEqual([
      [
        "part P01",
        "measured thickness",
        `thickness that must be left before corrosion: at least ${(Math.ceil((valueOf("e") + 1) * 100) / 100).toFixed(2)} mm`,
      ],
    ]);

    const bench = changed(demoBook, "safety-valve:SV-01", (value) => ({
      ...value,
      bench: without("readings")(value["bench"] as JsonObject),
    }));
    // By hand: 11 bar with 3 % of it; it closes at 11 − 0.15·11 to 0.98·11 bar by the limits of this profile.
    expect(saidOf(bench)[0]?.slice(2, 4)).toEqual([
      "pressure at which it opens: at least 10.670 bar",
      "pressure at which it opens: at most 11.330 bar",
    ]);

    const planned = changed(demoBook, "dimension-check:DIM-01", (value) => ({
      ...value,
      rows: rowsOf(value, "rows").map((row, index) => (index === 0 ? without("measured")(row) : row)),
    }));
    expect(saidOf(planned).map(([, of, ...limits]) => [of, ...limits])).toEqual([
      ["measured", "what is permitted: at least 7.0 mm"],
    ]);
  });
});

describe("a limit that nothing was compared with", () => {
  test("is no pass: it has a mark of its own, which no count takes for a check", () => {
    const states = new Set(["test-limits", "tested-length", "image-quality", "valve-settings", "valve-bench-limits"]);
    // A joint that is not radiographed is asked for no wire.
    const marks = interim.outcomes
      .filter(({ definition, verdict }) => states.has(definition) && verdict !== "not applicable")
      .map(({ verdict }) => verdict);
    expect(new Set(marks)).toEqual(new Set(["computed"]));
    // Beside them stand figures that are held against nothing either: a design stress is an input of what accepts, a carbon equivalent of what a procedure asks.
    const others = interim.outcomes.filter((one) => one.verdict === "computed" && !states.has(one.definition));
    expect(new Set(others.map(({ definition }) => definition))).toEqual(
      new Set(["carbon-equivalent", "design-stress"]),
    );
    expect(interim.counts.computed).toBe(marks.length + others.length);
    const { passed, failed, rejected, answered, notJudged, notDue, notApplicable, computed } = interim.counts;
    const all = passed + failed + rejected + answered + notJudged + notDue + notApplicable + computed;
    expect(all).toBe(interim.outcomes.length);
  });

  test("stands on the page of its thing in an interim issue, and on none of a final one", async () => {
    const pageOf = async (judged: JudgedBook, url: string) =>
      JSON.stringify((await layOut(judged)).pages.find((page) => page.url === url)?.blocks).replaceAll("\u00a0", " ");
    const said = await pageOf(interim, "equipment/r-TQ423-01.html");
    expect(said).toContain("What the measurement will be held against");
    expect(said).toContain("nothing has been compared with them yet");
    expect(said).toContain("23.7 bar");
    expect(said).toContain("pressure test, planned for 2026-06-23");
    expect(await pageOf(interim, "joint/r-C2.html")).toContain("374.5 mm");
    expect(await pageOf(interim, "joint/r-C1.html")).not.toContain("will be held against");
    expect(await pageOf(sound, "equipment/r-TQ423-01.html")).not.toContain("will be held against");
  }, 60_000);
});

describe("lists of what is owed", () => {
  test("take announcements along with what they belong to: by who must act, and until a milestone", () => {
    const kinds = (asked: Asked) => [...new Set(heldAgainst(interim, asked).map(({ item }) => item.owner))].sort();
    expect(kinds({})).toEqual(["purchasing", "quality", "testing", "welding coordination"]);
    expect(kinds({ until: "welding" })).toEqual(["welding coordination"]);
    expect(kinds({ until: "testing-complete" })).toEqual(["testing", "welding coordination"]);
    expect(kinds({ until: "pressure-test" })).toEqual(["quality", "testing", "welding coordination"]);
    expect(kinds({ owner: "purchasing" })).toEqual(["purchasing"]);
    expect(kinds({ owner: "Glimmerfield Testing" })).toEqual([]);
  });

  test("say at which temperatures a joint is welded, while it is not, and not of one that is", () => {
    const text = owedText(listOf(interim), ["what is owed"], heldAgainst(interim));
    // Of the procedures: WPS-03 revision 2 for C2, WPS-05 for N01; L1 is welded.
    expect(text).toContain("  temperature of the parts before welding: at least 10 °C");
    expect(text).toContain("  joint C2, circumferential: interpass temperature: at most 220 °C");
    expect(text).toContain("  joint N01, nozzle: interpass temperature: at most 200 °C");
    expect(text).not.toContain("joint L1, longitudinal: interpass temperature");
  });

  test("say what is the same for all once, in text; in a sheet each thing has its limits in its row", () => {
    const list = listOf(interim);
    const text = owedText(list, ["what is owed"], heldAgainst(interim));
    expect(text).toContain(
      [
        "what the NDT report with method MT will be held against: testing; testing complete, planned for 2026-06-18; overlaps count once",
        "  quality level it is judged to, or a stricter one: C",
        "  rest after the last run, where steel and thickness ask for it and no heat treatment follows: at least 16 h",
        "  thickness above which a joint rests: 12 mm",
        // By hand: a quarter of 279 mm and of 189 mm, rounded up.
        "  joint N01, nozzle: length to be tested: at least 69.8 mm",
        "  joint N02, nozzle: length to be tested: at least 69.8 mm",
        "  joint N03, nozzle: length to be tested: at least 47.3 mm",
      ].join("\n"),
    );
    const sheet = owedSheet(list, heldAgainst(interim));
    const at = sheet.columns.findIndex(({ heading }) => heading === "Will be held against");
    const cellOf = (what: string, thing: string) =>
      sheet.rows.find((row) => row[2] === what && row[3] === thing)?.[at] ?? "";
    expect(cellOf("NDT report with method MT", "joint N03")).toMatch(/^length to be tested: at least 47\.3 mm; /);
    expect(cellOf("pressure test HYD-01", "named by inspection step ITP-230")).toMatch(
      /^equipment TQ423-01: pressure needed at the top: at least 15\.80 bar; /,
    );
    expect(sheet.rows.filter((row) => row[at] !== "").length).toBe(
      new Set(heldAgainst(interim).flatMap(({ announced }) => announced.awaits)).size,
    );
  });
});

describe("a definition", () => {
  test("that announces what nobody owes, or a value it does not have, is a fault of the program", () => {
    const { definitions } = interim;
    const broken = definitions.calculations.map((one) =>
      one.id !== "test-limits"
        ? one
        : {
            ...one,
            announces: [
              { awaits: "<pressure-test:equipment>.pumpedVolume", limits: [{ symbol: "nothing", is: "is" } as const] },
              { awaits: "emptyMass", limits: [{ parameter: "unheardOf", means: "x", is: "is" } as const] },
            ],
          },
    );
    expect(() => planOf({ ...definitions, calculations: broken })).toThrow(
      /pumpedVolume[\s\S]*announces "nothing", which is no symbol[\s\S]*emptyMass[\s\S]*announces "unheardOf", which is no parameter/,
    );
  });
});

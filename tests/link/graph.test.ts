import { address } from "../support/address.ts";
import { describe, expect, test } from "vitest";
import { linkRecords } from "../../src/link/graph.ts";
import { parseTarget } from "../../src/link/target.ts";
import { heatId } from "../../src/link/heats.ts";
import type { JsonObject } from "../../src/model/json.ts";
import { recordOf } from "../support/small-book.ts";
import { kind, link, list, object, text } from "../support/small-kinds.ts";

const kinds = new Map(
  [
    kind("joint", { procedure: link("procedure@revisions"), others: list(link(["joint", "part"])) }),
    kind("part", {
      row: link("material-certificate#rows"),
      regions: list(object({ region: text() }), { rowKey: "region" }),
      fields: list(object({ field: text() }), { rowKey: "field" }),
      source: object({ original: link("original") }),
    }),
    kind("sheet", { subject: link(["part", "joint", "part#regions", "part#fields"]) }),
    kind("procedure", { revisions: list(object({ revision: text({ required: true }) }), { rowKey: "revision" }) }),
    kind("material-certificate", {
      mill: link("mill"),
      rows: list(object({ heat: text(), row: text() }), { rowKey: "heat" }),
    }),
    kind("mill", {}),
    kind("original", {}),
    kind(
      "heat",
      {
        number: text(),
        mill: link("mill"),
        rows: list(link("material-certificate#rows")),
        certificates: list(link("material-certificate")),
      },
      true,
    ),
  ].map((one) => [one.name, one]),
);
const run = (...records: readonly (readonly [string, string, JsonObject])[]) =>
  linkRecords(
    records.map(([name, id, value]) => recordOf(name, id, value)),
    kinds,
  );
const keys = (linked: ReturnType<typeof run>) => linked.findings.map(({ key }) => key).sort();
const linkAt = (linked: ReturnType<typeof run>, id: string, pointer: string) => {
  const from = linked.graph.records.find((record) => record.id === id);
  return from === undefined ? undefined : linked.graph.out.get(from)?.get(pointer);
};
const certificate = (mill: string, ...heats: readonly string[]): JsonObject => ({
  mill,
  rows: heats.map((heat) => ({ heat })),
});

describe("what a link names", () => {
  test.each([
    ["W07", ["welder"], { kind: "welder", id: "W07" }],
    ["joint:L1", ["joint", "part"], { kind: "joint", id: "L1" }],
    ["CRT-012#84613", ["material-certificate#rows"], { kind: "material-certificate", id: "CRT-012", row: "84613" }],
    ["WPS-03@2", ["welding-procedure@revisions"], { kind: "welding-procedure", id: "WPS-03", revision: "2" }],
    ["part:P1", ["joint", "part", "part#regions"], { kind: "part", id: "P1" }],
    ["part:P1#left", ["joint", "part", "part#regions"], { kind: "part", id: "P1", row: "left" }],
    ["CRT-1#A#B", ["material-certificate#rows"], { kind: "material-certificate", id: "CRT-1", row: "A#B" }],
  ])("%s", (written, targets, target) => expect(parseTarget(written, targets)).toEqual(target));
  test.each([
    ["w07", ["welder"]],
    ["welder:W07", ["welder"]],
    ["L1", ["joint", "part"]],
    ["weld:L1", ["joint", "part"]],
    ["W07#1", ["welder"]],
    ["CRT-012", ["material-certificate#rows"]],
    ["CRT-012#", ["material-certificate#rows"]],
    ["", ["welder"]],
    ["-W07", ["welder"]],
    ["A".repeat(41), ["welder"]],
  ])("refused: %s", (written, targets) => expect(parseTarget(written, targets)).toHaveProperty("expected"));
});

describe("links", () => {
  test("lead to a row and to its record, and back", () => {
    const linked = run(
      ["material-certificate", "CRT", certificate("M", "H1", "H2")],
      ["part", "P1", { row: "CRT#H2" }],
      ["mill", "M", {}],
    );
    expect(keys(linked)).toEqual([]);
    expect(linkAt(linked, "P1", "/row")).toMatchObject({ state: "found", toPointer: "/rows/1" });
    expect(
      linked.graph.back
        .get(address("material-certificate:CRT/rows/1"))
        ?.map(({ from }) => from.id)
        .sort(),
    ).toEqual(["M-H2", "P1"]);
  });
  test("a row's own name wins over its key", () => {
    const rows = [
      { heat: "H1", row: "A" },
      { heat: "H1", row: "B" },
    ];
    const linked = run(
      ["material-certificate", "CRT", { rows }],
      ["part", "P1", { row: "CRT#B" }],
      ["part", "P2", { row: "CRT#H1" }],
    );
    expect(linkAt(linked, "P1", "/row")?.toPointer).toBe("/rows/1");
    expect(keys(linked)).toEqual(["link-row|material-certificate:CRT|H1"]);
  });
  test("to a revision", () => {
    const linked = run(
      ["procedure", "W1", { revisions: [{ revision: "0" }, { revision: "1" }] }],
      ["joint", "J1", { procedure: "W1@1" }],
      ["joint", "J2", { procedure: "W1@2" }],
    );
    expect(linkAt(linked, "J1", "/procedure")?.toPointer).toBe("/revisions/1");
    expect(linked.findings.find(({ rule }) => rule === "link-row")?.why).toBe("procedure W1 has 0, 1");
  });
  test("to a record, or to a row of any of several lists of one kind", () => {
    const linked = run(
      [
        "part",
        "P1",
        { regions: [{ region: "left" }, { region: "both" }], fields: [{ field: "2" }, { field: "both" }] },
      ],
      ...["P1", "P1#left", "P1#2", "P1#both", "P1#right"].map(
        (subject, index) => ["sheet", `S${index}`, { subject: `part:${subject}` }] as const,
      ),
    );
    const pointers = [0, 1, 2, 3].map((index) => linkAt(linked, `S${index}`, "/subject")?.toPointer);
    expect(pointers).toEqual(["", "/regions/0", "/fields/0", undefined]);
    expect(linked.findings.map(({ subject, why }) => [subject?.id, why])).toEqual([
      ["S3", "it stands in regions and fields"],
      ["S4", "part P1 has left, both, 2, both"],
    ]);
  });
  test("in lists and to several kinds", () => {
    const linked = run(
      ["joint", "J1", { others: ["joint:J2", "part:P1", "P1"] }],
      ["joint", "J2", {}],
      ["part", "P1", {}],
    );
    expect(keys(linked)).toEqual(["link-form|joint:J1|others (P1)"]);
    expect(linked.graph.back.get(address("part:P1"))?.[0]?.path).toBe("others[]");
  });
  test("to a record that is not there: absent, no fault", () => {
    const linked = run(["material-certificate", "CRT", certificate("M9")]);
    expect(keys(linked)).toEqual([]);
    expect([...linked.graph.absent.keys()]).toEqual(["mill:M9"]);
  });
  test("of the sources of single fields", () => {
    const linked = run(["part", "P1", { sources: { "/row": { original: "O9", page: 2 } } }], ["original", "O1", {}]);
    expect([...linked.graph.absent.keys()]).toEqual(["original:O9"]);
    expect(linkAt(linked, "P1", "/sources/~1row/original")?.path).toBe("sources[].original");
  });
  test("order: records by kind and id, whatever the order of files", () => {
    const linked = run(["part", "P2", {}], ["joint", "J1", {}], ["part", "P1", {}]);
    expect(linked.graph.records.map(({ id }) => id)).toEqual(["J1", "P1", "P2"]);
    expect([...linked.graph.byKind.keys()]).toEqual(["joint", "part"]);
  });
  test("records of unknown kinds are left to the loader", () =>
    expect(run(["thing", "T1", {}]).graph.records).toEqual([]));
});

describe("heats", () => {
  const heats = (linked: ReturnType<typeof run>) =>
    [...(linked.graph.byKind.get("heat")?.values() ?? [])].map(({ id, value }) => [id, value["rows"]]);
  test("merge the rows of one mill and one number", () => {
    const linked = run(
      ["mill", "M", {}],
      ["material-certificate", "A", certificate("M", "84613", "84614")],
      ["material-certificate", "B", certificate("M", "84613")],
    );
    expect(heats(linked)).toEqual([
      ["M-84613", ["A#84613", "B#84613"]],
      ["M-84614", ["A#84614"]],
    ]);
    expect(keys(linked)).toEqual([]);
  });
  test("of two mills stay apart", () => {
    const linked = run(
      ["mill", "M", {}],
      ["mill", "N", {}],
      ["material-certificate", "A", certificate("M", "1")],
      ["material-certificate", "B", certificate("N", "1")],
    );
    expect(heats(linked).map(([id]) => id)).toEqual(["M-1", "N-1"]);
  });
  test("numbers that become one id are a query", () => {
    const linked = run(
      ["mill", "M", {}],
      ["material-certificate", "A", certificate("M", "84 613")],
      ["material-certificate", "B", certificate("M", "84/613")],
    );
    expect(keys(linked)).toEqual(["id-distinct|material-certificate:B|rows (84/613) heat"]);
  });
  test("a certificate whose mill is mistyped makes none, and is one fault", () => {
    const linked = run(["mill", "M-1", {}], ["material-certificate", "A", certificate("M1", "5")]);
    expect(heats(linked)).toEqual([]);
    expect(keys(linked)).toEqual(["link-exact|material-certificate:A|mill"]);
  });
  test("a row whose name another bears makes none, and is one fault", () => {
    const linked = run(["mill", "M", {}], ["material-certificate", "A", certificate("M", "5", "5", "6")]);
    expect(heats(linked).map(([id]) => id)).toEqual(["M-6"]);
    expect(keys(linked)).toEqual(["row-unique|material-certificate:A|rows (5)"]);
  });
  test("ids keep to the alphabet and to forty signs, and long ones stay apart", () => {
    expect(heatId("MILL", "84 613/b")).toBe("MILL-84-613-B");
    const [one, other] = [heatId("MILL", `${"7".repeat(60)}1`), heatId("MILL", `${"7".repeat(60)}2`)];
    expect(one).toMatch(/^[A-Z0-9][A-Z0-9.-]{0,39}$/);
    expect(one).not.toBe(other);
  });
});

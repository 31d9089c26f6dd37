import { beforeAll, describe, expect, test } from "vitest";
import { recordMeant } from "../../src/commands/trace-name.ts";
import { usesJson, usesText } from "../../src/commands/trace-uses.ts";
import { usesOf } from "../../src/link/uses.ts";
import { addressOf } from "../../src/model/record.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import { isList, isObject, type Json } from "../../src/model/json.ts";
import { noInk } from "../../src/report/text.ts";
import { sound } from "../support/demo-book.ts";

let judged: JudgedBook;
beforeAll(() => {
  judged = sound;
});

const said = (kind: string, id: string) => usesText(judged, recordMeant(judged, kind, id), noInk);
const all = (kind: string) => [...(judged.graph.byKind.get(kind)?.values() ?? [])];
const list = (value: Json | undefined) => (isList(value) ? value : []);

describe("where a record was used", () => {
  test("which joints a welder welded: those whose logs and repairs name him, counted by hand from the records", () => {
    const named = (value: Json | undefined) => JSON.stringify(list(value)).includes('"W07"');
    const logs = all("weld-log").filter(({ value }) =>
      list(value["runs"]).some((run) => isObject(run) && named(run["welders"])),
    );
    const repairs = all("repair").filter(({ value }) => named(value["welders"]));
    const joints = new Set([...logs, ...repairs].map(({ value }) => value["joint"]));
    expect(joints.size).toBeGreaterThan(1);
    const welder = recordMeant(judged, "person", "W07");
    const about = usesOf(judged.graph, judged.definitions.kinds, welder).flatMap((use) => use.about);
    expect(new Set(about.filter(({ kind }) => kind === "joint").map(({ id }) => id))).toEqual(joints);
    expect(said("person", "W07")).toMatch(/^ {2}WL-C2, of joint C2: runs root, welders; runs fill, welders/m);
    expect(said("person", "W07")).toMatch(/^these are about: joint C2, C3/m);
  });

  test("which parts have a heat: those whose marks name a row of it", () => {
    const [heat] = all("heat");
    if (heat === undefined) throw new Error("there is no heat");
    const rows = new Set(list(heat.value["rows"]));
    const marks = all("piece-mark").filter(({ value }) => rows.has(value["certificateRow"] ?? ""));
    const uses = usesOf(judged.graph, judged.definitions.kinds, heat);
    expect(uses.filter(({ record }) => record.kind === "piece-mark").map(({ record }) => record.id)).toEqual(
      marks.map(({ id }) => id),
    );
    expect(
      new Set(uses.flatMap(({ about }) => about.filter(({ kind }) => kind === "part").map(({ id }) => id))),
    ).toEqual(new Set(marks.map(({ value }) => value["part"])));
  });

  test("nothing that names a record is left out, of any record of the book", () => {
    for (const record of judged.graph.records) {
      if (judged.definitions.kinds.get(record.kind)?.derived === true) continue;
      const links = judged.graph.back.get(addressOf(record)) ?? [];
      const from = links.filter((link) => link.from !== record && link.from.kind !== "heat").map((link) => link.from);
      const uses = usesOf(judged.graph, judged.definitions.kinds, record).map((use) => use.record);
      expect(new Set(uses)).toEqual(new Set(from));
    }
  });

  test("instruments, originals and batches, as text and as JSON; a record that nothing names says so", () => {
    expect(said("instrument", "PG-03")).toContain("of equipment TQ423-01: gauges A, instrument");
    expect(said("original", "ORG-PLAN")).toContain("ITP-010: original");
    expect(said("batch", "B-2217")).toMatch(/these are about: joint C1, C2/);
    expect(usesJson(judged, recordMeant(judged, "instrument", "PG-03"))).toContainEqual({
      kind: "pressure-test",
      id: "HYD-01",
      at: ["/gauges/0/instrument"],
      about: [{ kind: "equipment", id: "TQ423-01" }],
    });
    expect(said("issue", "ISSUE")).toBe("used in\n\nno record names it\n");
  });
});

describe("which record is meant", () => {
  test("a word of the kind's name, small letters, and what one record alone states", () => {
    const [heat] = all("heat");
    expect(recordMeant(judged, "batch", "b-2217")).toMatchObject({ kind: "consumable-batch", id: "B-2217" });
    expect(recordMeant(judged, "heats", heat?.value["number"] as string)).toBe(heat);
  });

  test("else what was probably meant is named", () => {
    const refusal = (kind: string, id: string) => {
      try {
        return recordMeant(judged, kind, id).id;
      } catch (error) {
        return error instanceof Error ? error.message : "";
      }
    };
    expect(refusal("persn", "W07")).toBe(`there is no kind "persn"; did you mean person?`);
    expect(refusal("certificate", "CRT-001")).toContain("did you mean body-certificate or material-certificate?");
    expect(refusal("heat", "8471")).toContain("did you mean GREYVAULT-84713?");
    expect(refusal("person", "K9")).toContain("did you mean K1?");
    expect(refusal("deviation", "DV-01")).toMatch(/^the book holds no deviation/);
  });

  test("a heat whose certificate names no mill is no heat: the certificate that lists it is named", () => {
    const [certificate] = all("material-certificate");
    const rows = list(certificate?.value["rows"]);
    const number = isObject(rows[0]) ? rows[0]["heat"] : undefined;
    if (typeof number !== "string") throw new Error("the certificate lists no heat");
    const graph = { ...judged.graph, byKind: new Map([...judged.graph.byKind, ["heat", new Map()]]) };
    expect(() => recordMeant({ ...judged, graph }, "heat", number)).toThrow(
      `a row of that name is in material certificate ${certificate?.id ?? ""}: trace material-certificate`,
    );
    expect(() => recordMeant({ ...judged, graph }, "heat", "NO-SUCH-HEAT")).toThrow(/^the book holds no heat at all$/);
  });
});

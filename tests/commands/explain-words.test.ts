import { beforeAll, describe, expect, test } from "vitest";
import { blankRecord } from "../../src/commands/explain-blank.ts";
import { forceOf } from "../../src/judge/in-force.ts";
import { ofBook } from "../../src/commands/explain-book.ts";
import { explained, listNamed, lists, named, names, type Explained } from "../../src/commands/explained.ts";
import { engine } from "../../src/commands/engine.ts";
import { shippedDefinitions } from "../../src/definitions.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { milestones, owners } from "../../src/model/vocabulary.ts";
import { runReal } from "../support/real.ts";
import { boilerBook, demoBook, sound, soundBoiler } from "../support/demo-book.ts";

const definitions = shippedDefinitions(loadKinds(["schemas"]));
const all = explained(definitions, engine.builtIns);

const say = async (...words: readonly string[]) => {
  const ran = await runReal(process.cwd(), "explain", ...words);
  return ran.exit === 0 ? ran.out : ran.err;
};

describe("every name a reader meets", () => {
  test("is explained: what findings, books, schemas and issue.json can name", () => {
    const met = [
      ...definitions.kinds.keys(),
      ...definitions.registers.flatMap(({ id, requirements }) => [id, ...requirements.map((row) => row.id)]),
      ...definitions.profiles.flatMap(({ id, parameters }) => [id, ...Object.keys(parameters)]),
      ...definitions.tables.map(({ id }) => id),
      ...milestones,
      ...owners,
      "mm",
      "N/mm²",
      "mm2",
      "bar(a)",
      "°C",
    ];
    expect(met.filter((name) => names(named(all, name)).length === 0)).toEqual([]);
  });

  test("and each of the lists, alone", () => {
    for (const name of lists) {
      const list = listNamed(all, name);
      if (list === undefined) throw new Error(name);
      const filled = Object.entries(list).filter(([, rows]: [string, readonly unknown[]]) => rows.length > 0);
      expect(filled.map(([one]) => one).filter((one) => one !== "builtIns")).toEqual([name]);
    }
    expect(listNamed(all, "joint")).toBeUndefined();
  });

  test("a parameter: value and basis in each profile, and its cautious side", async () => {
    const text = await say("testFactorPressure");
    expect(text).toContain("the greater, the more cautious");
    // Directive 2014/68/EU, Annex I, 7.4: 1.43 times the maximum allowable pressure.
    for (const { id } of definitions.profiles.slice(0, 3))
      expect(text).toMatch(new RegExp(`^${id} 1\\.43: Directive 2014/68/EU, Annex I, 7\\.4`, "m"));
    expect(await say("cautious")).toContain("testFactorPressure = 1.43");
  });

  test("a table: its grades, editions and bands, each row once", async () => {
    const text = await say("grade-strength");
    expect(text).toContain("EN 10028-2 · 2017 · P265GH: thickness over 0 up to 16 mm; thickness over 16 up to 40 mm");
    const bands = text.split("\n").flatMap((line) => line.match(/thickness (over|from|any|up)/g) ?? []);
    expect(bands).toHaveLength(definitions.tables.find(({ id }) => id === "grade-strength")?.rows.length ?? 0);
  });

  test("a register by milestone, a milestone by rows and fields, an owner by what he answers", async () => {
    const [register] = definitions.registers;
    const text = await say(register?.id ?? "");
    for (const { id } of register?.requirements ?? []) expect(text).toMatch(new RegExp(`^ {2}${id}: `, "m"));
    expect(await say("design-approved")).toContain("joint.parts");
    expect(await say("welding coordination")).toContain("welder-qualified");
  });

  test("names nobody knows get the nearest", async () => {
    expect(await say("holdMinuts")).toContain("did you mean holdMinutes?");
    expect(await say("desing-approved")).toContain("did you mean design-approved or");
    expect(await say("registrs")).toContain("did you mean registers?");
  });
});

describe("--blank", () => {
  test("holds what identifies a record and what is owed of it, and nothing that could pass for a value", () => {
    for (const kind of definitions.kinds.values()) {
      if (kind.derived) continue;
      const blank = blankRecord(kind);
      const wanted = [...kind.fields.values()].filter(({ required, due }) => required || due !== undefined);
      expect(Object.keys(blank)).toEqual(["kind", ...wanted.map(({ name }) => name)]);
      const { kind: name, ...rest } = blank;
      expect(name).toBe(kind.name);
      expect(JSON.stringify(rest).replaceAll(/"<[^"]*>"/g, "")).not.toMatch(/[:[](["\d]|true|false)/);
    }
  });

  test("is of a kind that records are written of", async () => {
    expect(JSON.parse(await say("joint", "--blank"))).toMatchObject({ kind: "joint", parts: ["<ID of part>"] });
    for (const name of ["heat", "cautious"]) expect(await say(name, "--blank")).toContain("--blank is for a kind");
    expect(await say("--blank")).toContain("--blank is for a kind");
  });
});

describe("--book", () => {
  let vessel: Explained;
  let boiler: Explained;
  beforeAll(() => {
    vessel = ofBook(all, sound);
    boiler = ofBook(all, soundBoiler());
  }, 60_000);

  test("leaves out the other register and profiles, and what does not apply to anything the book holds", () => {
    const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);
    expect([ids(vessel.registers), ids(boiler.registers)]).toEqual([["unfired-vessel"], ["shell-boiler"]]);
    expect(ids(vessel.profiles)).toEqual(["ped-en-13445"]);
    expect(ids(vessel.calculations)).not.toContain("furnace");
    expect(ids(boiler.calculations)).toContain("furnace");
    expect(ids(vessel.calculations)).toContain("gas-safety-valve");
    expect(ids(boiler.calculations)).not.toContain("gas-safety-valve");
    expect(ids(definitions.registers[1]?.requirements ?? [])).toContain("limiter-sensor");
    expect(ids(boiler.requirements)).toContain("limiter-trial");
    expect(ids(boiler.requirements)).not.toContain("limiter-sensor");
  });

  test("leaves out of a kind what only a boiler has, names it once, and keeps all else", async () => {
    const leftOut = (all: Explained, name: string) => all.kinds.find((kind) => kind.name === name)?.leftOut ?? [];
    const fields = (all: Explained, name: string) => [
      ...(all.kinds.find((kind) => kind.name === name)?.fields.keys() ?? []),
    ];
    expect(leftOut(vessel, "part")).toEqual(
      expect.arrayContaining(["hoop", "breathingSpaces", "tubeFields", "heating"]),
    );
    expect(leftOut(vessel, "equipment")).toEqual(
      expect.arrayContaining(["levels", "duty", "heatingSurface", "atmosphericPressure"]),
    );
    expect(leftOut(vessel, "nameplate")).toEqual(["steamOutput", "heatingSurface"]);
    for (const { name, leftOut: own = [], fields: left } of vessel.kinds) {
      expect(own.filter((path) => left.has(path))).toEqual([]);
      // Nothing is lost: a field is either explained or named.
      const whole = [...(definitions.kinds.get(name)?.fields.keys() ?? [])];
      expect([...left.keys(), ...own.filter((path) => !/[.[]/.test(path))].sort()).toEqual(whole.sort());
    }
    // What a receiver may have one day is kept: openings, flat plates, ends.
    expect(fields(vessel, "part")).toEqual(expect.arrayContaining(["openings", "regions", "crownRadius", "role"]));
    // A boiler states no cycles of a vessel, and has no gas under pressure: what only the capacity of a valve for gas reads.
    expect(boiler.kinds.flatMap((kind) => kind.leftOut ?? [])).toEqual([
      "pressureCycles",
      "medium.molarMass",
      "medium.isentropicExponent",
      "medium.compressibilityFactor",
    ]);
    expect(vessel.milestones.flatMap((one) => one.fields).filter((path) => path.includes("tubeFields"))).toEqual([]);
    expect(await say("part", "--book", demoBook)).toMatch(
      /^left out, as such equipment has none or nothing that can apply to this book reads it: .*\bhoop, breathingSpaces, tubeFields$/m,
    );
    expect(await say("part", "--book", boilerBook)).not.toContain("left out, as");
  });

  test("a field that a record of the book states is explained, whoever reads it", () => {
    const judged = sound;
    const [part] = judged.graph.byKind.get("part")?.values() ?? [];
    const [equipment] = judged.graph.byKind.get("equipment")?.values() ?? [];
    if (part === undefined || equipment === undefined) throw new Error("the demonstration has parts and equipment");
    const withFurnace = {
      ...judged.graph,
      byKind: new Map(judged.graph.byKind).set(
        "part",
        new Map([["F1", { ...part, value: { ...part.value, role: "furnace-hoop" } }]]),
      ),
      records: [{ ...equipment, value: { ...equipment.value, heatingSurface: "3 m²" } }],
    };
    const whole = judged.definitions.whole ?? judged.definitions;
    const register = whole.registers.find(({ id }) => id === judged.book.value["register"]);
    const { force } = forceOf(withFurnace, judged.book, whole, register);
    const grown = ofBook(all, { ...judged, graph: withFurnace, inForce: force, definitions: force.definitions });
    const leftOut = grown.kinds.flatMap((kind) => (kind.leftOut ?? []).map((path) => `${kind.name}.${path}`));
    expect(leftOut).not.toContain("part.hoop");
    expect(leftOut).not.toContain("equipment.heatingSurface");
    // Its plate states the same figure then.
    expect(leftOut).not.toContain("nameplate.heatingSurface");
    // A hoop is of boilers: with it comes whatever a boiler may state.
    expect(leftOut).not.toContain("part.breathingSpaces");
  });

  test("says of a name that it does not apply, and keeps what nobody can say yet", async () => {
    expect(await say("furnace", "--book", demoBook)).toContain(`"furnace" does not apply to this book`);
    // It holds no part yet: its register alone says what can be.
    expect(await say("furnace", "--book", "records")).toContain(`"furnace" does not apply to this book`);
    expect(await say("torispherical-end", "--book", "records")).toContain("calculation torispherical-end");
  });
});

import { describe, expect, test } from "vitest";
import { fromMemory, ownChoice, published } from "../../src/model/basis.ts";
import { calculation } from "../../src/model/calculation.ts";
import type { Definitions } from "../../src/model/definitions.ts";
import { date, optional, text, things } from "../../src/model/input.ts";
import { rule } from "../../src/model/rule.ts";
import { fieldLines } from "../../src/commands/field-text.ts";
import { judgedBook } from "../report/judged.ts";
import { runOn } from "./fakes.ts";

const thickness = calculation({
  id: "thin-wall",
  title: "Thin wall under pressure",
  basis: fromMemory("Thin-wall theory"),
  covers: "straight walls only",
  appliesTo: { kind: "part", when: [{ path: "role", equals: "shell-course" }] },
  inputs: {
    p: { path: "book.equipment.pressure", unit: "MPa", means: "pressure" },
    d: { path: "allowance", unit: "mm", means: "allowance", need: "optional", otherwise: 0 },
  },
  steps: [{ symbol: "e", unit: "mm", means: "thickness", formula: "p*2 + d", empirical: true }],
  limits: [{ left: "p", relation: "<=", right: "10", means: "pressure within the theory" }],
  accept: [{ left: "e", relation: "<=", right: "20", means: "thickness at hand", accuses: "d" }],
  compared: [],
  examples: [
    { source: "worked by hand", class: "constructed", given: { p: 1, d: 2 }, expect: { e: 4 }, within: 0.001 },
  ],
});

const qualified = rule({
  id: "welder-known",
  title: "A welder has a certificate",
  basis: published("A standard", "2017", "4.2"),
  kind: "weld-log",
  when: [{ path: "weldedOn", exists: true }],
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    on: date("weldedOn"),
    note: optional(text("note")),
    certificates: things("welder.certificates", { until: date("validTo") }),
  },
  *check() {
    yield { at: "on", message: "never", why: "w", hint: "h" };
  },
  examples: [
    {
      name: "one day late",
      given: { on: "2026-03-09" },
      objections: ["welder W07 was not qualified"],
      source: "constructed",
    },
  ],
});

const definitions: Definitions = {
  ...judgedBook().definitions,
  calculations: [thickness],
  rules: [qualified],
  facts: [
    {
      id: "same-serial",
      title: "One serial number",
      basis: ownChoice("one fact"),
      reading: { type: "text" },
      statements: ["book.nameplate.serial", "book.equipment.serial"],
      owner: "design",
    },
  ],
  registers: [
    {
      id: "vessel",
      title: "Vessel",
      requirements: [
        {
          id: "joint-logged",
          title: "Each joint has a weld log",
          each: { kind: "joint" },
          needs: "<weld-log:joint>",
          due: "welding",
          basis: ownChoice("traceability"),
          owner: "shop",
        },
      ],
    },
  ],
};

const run = (...words: readonly string[]) => runOn({ judged: judgedBook(), definitions }, "explain", ...words);

describe("explain", () => {
  test("without a name lists every kind, calculation, rule and built-in rule", async () => {
    const { exit, out } = await run();
    expect(exit).toBe(0);
    for (const line of [
      "kinds (2)",
      "  joint     Joint",
      "calculations (1)",
      "  thin-wall  Thin wall under pressure",
      "rules (1)",
      "rules built in (1)",
      "  link-form  A link is well formed",
      "facts that several records state (1)",
      "requirements (1)",
    ])
      expect(out.split("\n")).toContain(line);
  });

  test("a kind: fields with type, unit, due and description", async () => {
    const { out } = await run("joint");
    expect(out).toBe(
      [
        "kind joint",
        "Joint: One joint.",
        "",
        "fields",
        "  weldedOn: date (event), due at welding",
        "    Day.",
        "  thickness: quantity in mm, always needed",
        "    At the seam.",
        "",
      ].join("\n"),
    );
  });

  test("a calculation: basis, scope, formulas, limits, inputs and examples with their sources", async () => {
    const { out } = await run("thin-wall");
    expect(out.split("\n")).toEqual([
      "calculation thin-wall",
      "Thin wall under pressure",
      "",
      "basis      Thin-wall theory (from memory)",
      `applies to part, when role is "shell-course"`,
      "covers     straight walls only",
      "",
      "inputs",
      "  p in MPa: pressure; from book.equipment.pressure",
      "  d in mm: allowance; from allowance, optional",
      "",
      "formulas",
      "  e = p*2 + d in mm: thickness",
      "",
      "limits of validity",
      "  p <= 10: pressure within the theory",
      "",
      "acceptance",
      "  e <= 20: thickness at hand",
      "",
      "examples",
      "  worked by hand (constructed): p 1, d 2 gives e 4, within 0.001",
      "",
    ]);
    expect((await run("thin-wall/results")).out).toBe(out);
  });

  test("a rule: basis, severity, inputs and examples", async () => {
    const { out } = await run("welder-known");
    expect(out.split("\n")).toEqual([
      "rule welder-known",
      "A welder has a certificate",
      "",
      "basis      A standard:2017, 4.2 (published)",
      "severity   nonconformity",
      "applies to weld-log, when weldedOn is present",
      "to act     shop",
      "",
      "inputs",
      "  on: weldedOn",
      "  note: note, optional",
      "  certificates: welder.certificates, all",
      "    until: validTo",
      "",
      "examples",
      "  one day late (constructed): welder W07 was not qualified",
      "",
    ]);
  });

  test("a built-in rule, a fact and a requirement are explained too", async () => {
    expect((await run("link-form")).out).toContain("rule link-form (built in)\nA link is well formed\n");
    expect((await run("same-serial")).out).toContain("stated by\n  book.nameplate.serial\n  book.equipment.serial\n");
    expect((await run("joint-logged")).out).toContain("needs      <weld-log:joint>\ndue        welding\n");
  });

  test("an unknown name is exit 2, with what was probably meant", async () => {
    expect(await run("thin-wal")).toMatchObject({
      exit: 2,
      out: "",
      err: `nothing is called "thin-wal"; did you mean thin-wall?\n`,
    });
    expect(await run("quark-gluon-plasma")).toMatchObject({
      exit: 2,
      err: `nothing is called "quark-gluon-plasma"; list all names with: databook explain\n`,
    });
  });

  test("json: the contract, and the same shape for one name", async () => {
    const all = JSON.parse((await run("--format", "json")).out) as Record<string, readonly Record<string, unknown>[]>;
    expect(all["kinds"]?.map(({ name }) => name)).toEqual(["joint", "original"]);
    expect(all["calculations"]).toMatchObject([
      {
        id: "thin-wall",
        title: "Thin wall under pressure",
        basis: { class: "from memory", document: "Thin-wall theory", text: "Thin-wall theory (from memory)" },
        examples: [
          { source: "worked by hand", class: "constructed", given: { p: 1, d: 2 }, expect: { e: 4 }, within: 0.001 },
        ],
      },
    ]);
    expect(all["rules"]).toMatchObject([
      {
        id: "welder-known",
        title: "A welder has a certificate",
        severity: "nonconformity",
        basis: { class: "published", clause: "4.2" },
        builtIn: false,
        inputs: [
          { name: "on", path: "weldedOn" },
          { name: "note", need: "optional" },
          { name: "certificates", many: true },
        ],
        examples: [
          {
            name: "one day late",
            given: { on: "2026-03-09" },
            objections: ["welder W07 was not qualified"],
            source: "constructed",
          },
        ],
      },
      { id: "link-form", builtIn: true, examples: [] },
    ]);
    const one = JSON.parse((await run("joint", "--format", "json")).out) as Record<
      string,
      readonly Record<string, unknown>[]
    >;
    expect(one["kinds"]?.[0]?.["fields"]).toMatchObject([
      { name: "weldedOn", type: "date", due: "welding", date: "event" },
      { name: "thickness", type: "quantity", unit: "mm", required: true },
    ]);
    expect(one["rules"]).toEqual([]);
  });
});

test("fields of every type, nested ones indented", () => {
  const base = { title: "", description: "", required: false };
  const lines = fieldLines(
    new Map([
      [
        "rows",
        {
          ...base,
          name: "rows",
          type: "list",
          rowKey: "joint",
          item: {
            ...base,
            name: "",
            type: "object",
            fields: new Map([
              ["joint", { ...base, name: "joint", type: "link", targets: ["joint", "part"], required: true }],
              ["result", { ...base, name: "result", type: "text", options: ["accepted", "rejected"] }],
            ]),
          },
        },
      ],
      ["rise", { ...base, name: "rise", type: "quantity", unit: "K", difference: true, plausible: ["1 K", "50 K"] }],
      ["factor", { ...base, name: "factor", type: "quantity", unit: "1" }],
      ["value", { ...base, name: "value", type: "quantity", unit: "any" }],
      ["seen", { ...base, name: "seen", type: "boolean" }],
    ]),
  );
  expect(lines).toEqual([
    "rows: list of object, rows named by joint",
    "  joint: link to joint or part, always needed",
    "  result: one of accepted | rejected",
    "rise: quantity in K (a difference), usually 1 K to 50 K",
    "factor: quantity without unit",
    "value: quantity in any unit",
    "seen: boolean",
  ]);
});

import { describe, expect, test } from "vitest";
import { builtInRules } from "../../src/judge/built-in.ts";
import { planOf } from "../../src/plan/plan.ts";
import { calculation } from "../../src/model/calculation.ts";
import {
  anyOf,
  date,
  exists,
  list as listOf,
  optional,
  quantity as quantityOf,
  table,
  text as textOf,
  thing,
  things,
  type Inputs,
} from "../../src/model/input.ts";
import { nearestWords } from "../../src/model/nearest.ts";
import { joined } from "../../src/model/profile.ts";
import { rule, type Rule } from "../../src/model/rule.ts";
import { basis, define, owes, type SmallDefinitions } from "../support/small-book.ts";
import { event, flag, link, list, object, oneOf, quantity, text } from "../support/small-kinds.ts";

const kinds = {
  part: {
    thickness: quantity("mm", { due: "order" }),
    note: text(),
    role: oneOf(["shell", "end"], { due: "order" }),
    bearing: flag({ due: "order" }),
    diameter: quantity("mm"),
    plate: link("plate", { due: "order" }),
    any: link(["plate", "report"]),
    rise: quantity("K", { difference: true, due: "order" }),
    rows: list(object({ value: quantity("mm", { due: "order" }), extra: text(), mode: oneOf(["a", "b"]) }), {
      due: "order",
    }),
    dims: object({ width: quantity("mm", { due: "order" }) }, { due: "order" }),
    made: event({ due: "order" }),
  },
  plate: { grade: text({ due: "order" }), spare: text() },
  report: {
    method: oneOf(["VT", "RT"], { required: true }),
    rows: list(object({ part: link("part", { required: true }) })),
  },
};
const making = (inputs: Inputs, more: Partial<Rule> = {}): Rule =>
  rule({
    id: "r",
    title: "r",
    basis,
    owner: "shop",
    severity: "nonconformity",
    kind: "part",
    inputs,
    *check() {
      yield* [];
    },
    examples: [],
    ...more,
  });
const plan = (more: Partial<SmallDefinitions>) => planOf(define({ kinds, ...more }));
const problems = (more: Partial<SmallDefinitions>): readonly string[] => {
  try {
    plan(more);
    return [];
  } catch (reason) {
    return reason instanceof Error
      ? reason.message
          .split("\n")
          .slice(1)
          .map((line) => line.trim())
      : [];
  }
};
const read = (inputs: Inputs, more: Partial<Rule> = {}, owed: SmallDefinitions["owed"] = []) =>
  problems({ rules: [making(inputs, more)], owed });

describe("stages follow from what a definition reads", () => {
  test.each([
    ["within", { t: quantityOf("thickness", "mm") }],
    ["within", { t: quantityOf("profile.least", "mm") }],
    ["chain", { g: textOf("plate.grade") }],
    ["chain", { plate: thing("plate", { grade: textOf("grade") }) }],
    ["chain", { r: anyOf(things("<report:rows[].part>", {})) }],
    ["whole", { r: anyOf(things("book.part", { t: quantityOf("thickness", "mm") })) }],
  ] as const)("%s", (stage, inputs) => {
    const profiles = [
      { id: "p", title: "p", parameters: { least: { value: "8 mm", means: "", cautious: "high", basis } } },
    ] as const;
    const made = plan({ rules: [making(inputs)], profiles });
    expect(made[stage].map(({ id }) => id)).toEqual(["r"]);
    expect(made.within.length + made.chain.length + made.whole.length).toBe(1);
  });
  test("rules about exceptions come before all others", () => {
    const made = plan({ rules: [making({ reason: optional(textOf("reason")) }, { kind: "waiver" })] });
    expect([made.exceptions.length, made.within.length]).toEqual([1, 0]);
  });
  test("rules that compare dates are known", () => {
    expect([...plan({ rules: [making({ a: date("made"), b: optional(date("made")) })] }).ordered]).toEqual(["r"]);
    expect([...plan({ rules: [making({ a: date("made") })] }).ordered]).toEqual([]);
    expect([...plan({ rules: [making({ all: listOf(date("made")) })] }).ordered]).toEqual(["r"]);
  });
});

describe("what is read as required must be owed", () => {
  const missing = (name: string, elsewhere = "") =>
    `rule r: path "${name}" of part: "${name}" is read as required, but nobody owes it: neither the schema, nor "owes" of a definition, nor a row of the register${elsewhere}`;
  const onlyThere = "; it is owed by requirement row where role is shell or end only";
  test("by the schema", () => expect(read({ t: quantityOf("thickness", "mm") })).toEqual([]));
  test("or not at all", () => expect(read({ n: textOf("note") })).toEqual([missing("note")]));
  test("optional and any ask nobody", () => {
    expect(read({ n: optional(textOf("note")), r: anyOf(listOf(textOf("rows[].extra"))) })).toEqual([]);
    expect(read({ n: exists("note") })).toEqual([]);
  });
  test("by a row of the register", () =>
    expect(read({ n: textOf("note") }, {}, [owes("row", "part", "note")])).toEqual([]));
  test("by a row under the same conditions, in any words that mean them", () => {
    const row = [
      owes("row", "part", "note", "order", {
        each: { kind: "part", when: [{ path: "role", equals: ["shell", "end"] }] },
      }),
    ];
    expect(read({ n: textOf("note") }, {}, row)).toEqual([missing("note", onlyThere)]);
    expect(read({ n: textOf("note") }, { when: [{ path: "role", equals: "shell" }] }, row)).toEqual([]);
    expect(read({ n: textOf("note") }, { when: [{ path: "bearing", equals: true }] }, row)).toEqual([
      missing("note", onlyThere),
    ]);
  });
  test("nobody owes what a condition says is there", () => {
    const there = { when: [{ path: "note", exists: true }] };
    expect(read({ n: textOf("note") }, there)).toEqual([]);
    expect(read({ n: textOf("note") }, { when: [{ path: "note", exists: false }] })).toHaveLength(1);
    expect(read({ s: textOf("plate.spare") }, { when: [{ path: "plate.spare", exists: true }] })).toEqual([]);
    expect(read({ s: textOf("plate.spare") }, { when: [{ path: "plate", exists: true }] })).toHaveLength(1);
    // One row that has it says nothing of the others.
    expect(
      read({ r: listOf(textOf("rows[].extra")) }, { when: [{ path: "rows[].extra", exists: true }] }),
    ).toHaveLength(1);
  });
  test("by a row about what a filter leaves", () => {
    const row = [
      owes("parts", "book", "book.part"),
      owes("row", "part", "diameter", "order", { each: { kind: "part", when: [{ path: "role", equals: "shell" }] } }),
    ];
    const shells = (path: string) => ({ all: listOf(thing(path, { d: quantityOf("diameter", "mm") })) });
    expect(read(shells('book.part[role="shell"]'), { kind: "book" }, row)).toEqual([]);
    expect(read(shells("book.part"), { kind: "book" }, row)).toHaveLength(1);
  });
  test("of the record of a row, under what the row knows of it", () => {
    const row = [
      owes("row", "part", "note", "order", { each: { kind: "part", when: [{ path: "role", equals: "shell" }] } }),
    ];
    const ofRow = (when: Rule["when"]) =>
      read({ n: textOf("record.note") }, { kind: "part#rows", when: when ?? [] }, row);
    expect(ofRow([{ path: "record.role", equals: "shell" }])).toEqual([]);
    expect(ofRow([{ path: "record.role", equals: "end" }])).toHaveLength(1);
    expect(ofRow([])).toHaveLength(1);
  });
  test("by a row that names the whole way", () => {
    const row = [owes("row", "part", "plate.spare")];
    expect(read({ s: textOf("plate.spare") }, {}, row)).toEqual([]);
    expect(read({ s: textOf("plate.spare") })).toHaveLength(1);
  });
  test("inside things too", () => {
    expect(read({ plate: thing("plate", { spare: textOf("spare") }) })).toHaveLength(1);
    expect(read({ plate: thing("plate", { spare: optional(textOf("spare")) }) })).toEqual([]);
    expect(read({ rows: listOf(thing("rows[]", { extra: textOf("extra") })) })).toHaveLength(1);
    expect(
      read({ rows: listOf(thing("rows[]", { extra: textOf("extra") })) }, {}, [owes("row", "part#rows", "extra")]),
    ).toEqual([]);
  });
  test("links back", () => {
    expect(read({ r: listOf(thing("<report:rows[].part>", {})) })).toHaveLength(1);
    expect(
      read({ r: listOf(thing("<report:rows[].part>", {})) }, {}, [
        owes("row", "part", '<report:rows[].part>[record.method="VT"]'),
      ]),
    ).toEqual([]);
  });
  test("conditions and filters", () => {
    expect(read({}, { when: [{ path: "note", equals: "x" }] })).toHaveLength(1);
    expect(read({}, { when: [{ path: "note", exists: true }] })).toEqual([]);
    expect(read({ v: anyOf(listOf(quantityOf('rows[mode="a"].value', "mm"))) })).toHaveLength(1);
  });
});

test("a condition may read what is owed under those before it, and not under those after", () => {
  const row = [
    owes("row", "part", "note", "order", { each: { kind: "part", when: [{ path: "role", equals: "shell" }] } }),
  ];
  const shell = { path: "role", equals: "shell" };
  const noted = { path: "note", equals: "x" };
  expect(read({}, { when: [shell, noted] }, row)).toEqual([]);
  expect(read({}, { when: [noted, shell] }, row)).toHaveLength(1);
  expect(read({}, { when: [{ ...shell, equals: "end" }, noted] }, row)).toHaveLength(1);
});

describe("paths that lead nowhere", () => {
  test.each([
    ["an unknown field", "thicknes", /no field "thicknes"/],
    ["an unknown kind", "book.parts", /no kind "parts"/],
    ["a link back that is none", "<report:method>", /report has no link "method"/],
    ["an unknown table", "table(x, note).y", /no table "x"/],
    ["an unknown calculation", "calculation(x).y", /no calculation "x"/],
    ["on behind a link to several kinds", "any.grade", /several kinds/],
    ["a filter for a value there is not", 'rows[mode="c"].value', /a value the field never has/],
    ["a filter on free text", 'rows[extra="c"].value', /free text/],
    ["items of no list", "thickness[]", /follows something that is no list/],
  ])("%s", (_, path, message) => expect(read({ x: optional(textOf(path)) }).join()).toMatch(message));
});

describe("how a value is read must fit what stands there", () => {
  test.each([
    ["a list as one value", optional(textOf("rows")), /ends at a list/],
    ["an object as a value", optional(textOf("dims")), /ends at an object/],
    ["a text as a date", optional(date("note")), /is read as a date/],
    ["a length as a pressure", optional(quantityOf("thickness", "bar")), /a value in mm, but is read in bar/],
    ["a difference as a temperature", optional(quantityOf("rise", "K")), /a value in ΔK, but is read in K/],
    ["in an unknown unit", optional(quantityOf("thickness", "furlong")), /no unit/],
  ])("%s", (_, input, message) => expect(read({ x: input }).join()).toMatch(message));
  test("in another unit of the same dimension", () =>
    expect(read({ x: quantityOf("thickness", "m"), y: quantityOf("rise", "ΔK") })).toEqual([]));
});

describe("calculations", () => {
  const made = (more: object) =>
    calculation({
      id: "c",
      title: "c",
      basis,
      covers: "s",
      appliesTo: { kind: "part" },
      inputs: { e: { path: "thickness", unit: "mm", means: "e" } },
      steps: [{ symbol: "x", unit: "mm", means: "x", formula: "2*e" }],
      limits: [],
      accept: [],
      compared: [],
      examples: [],
      ...more,
    });
  const bad = (more: object) => problems({ calculations: [made(more)] }).join();
  test("a sound one", () => expect(bad({})).toBe(""));
  test.each([
    [
      "an undeclared symbol",
      { steps: [{ symbol: "x", unit: "mm", means: "x", formula: "2*f" }] },
      /step x: "f" is neither an input nor an earlier step/,
    ],
    [
      "a later step",
      {
        steps: [
          { symbol: "x", unit: "mm", means: "x", formula: "y" },
          { symbol: "y", unit: "mm", means: "y", formula: "e" },
        ],
      },
      /step x/,
    ],
    [
      "units that do not multiply out",
      { steps: [{ symbol: "x", unit: "mm", means: "x", formula: "e*e" }] },
      /declared is mm/,
    ],
    ["units of another scale", { steps: [{ symbol: "x", unit: "m", means: "x", formula: "e" }] }, /factor of 1000/],
    [
      "a symbol declared twice",
      { steps: [{ symbol: "e", unit: "mm", means: "x", formula: "2*e" }] },
      /step e: is declared twice/,
    ],
    [
      "a limit of mixed units",
      { limits: [{ left: "e", relation: "<=", right: "3", means: "small" }] },
      /limit "small"/,
    ],
    [
      "an acceptance that accuses no input",
      { accept: [{ left: "e", relation: ">=", right: "x", means: "enough", accuses: "x" }] },
      /accuses "x", which is no input/,
    ],
    [
      "an acceptance that needs no input",
      { accept: [{ left: "e", relation: ">=", right: "x", means: "enough", accuses: "e", needs: "q" }] },
      /needs "q"/,
    ],
    ["a comparison with no step", { compared: [{ symbol: "e", unsafe: "low" }] }, /"e" is no step/],
    ["an adopted value that is no input", { adopted: "x" }, /"x" is no input/],
    [
      "a second method in other units",
      { crossCheck: { means: "m", symbol: "x", formula: "e*e", unit: "mm", within: "'0.1 mm'", basis } },
      /second method/,
    ],
    [
      "a second method of an unknown symbol",
      { crossCheck: { means: "m", symbol: "z", formula: "e", unit: "mm", within: "'0.1 mm'", basis } },
      /second method: "z" is no symbol/,
    ],
    [
      "a function with other parameters",
      {
        functions: [
          {
            name: "f",
            means: "f",
            basis,
            parameters: [{ name: "a", unit: "bar" }],
            unit: "mm",
            compute: () => ({ refused: "" }),
          },
        ],
        steps: [{ symbol: "x", unit: "mm", means: "x", formula: "f(e)" }],
      },
      /step x/,
    ],
    [
      "a function with another result",
      {
        functions: [
          {
            name: "f",
            means: "f",
            basis,
            parameters: [{ name: "a", unit: "mm" }],
            unit: "bar",
            compute: () => ({ refused: "" }),
          },
        ],
        steps: [{ symbol: "x", unit: "mm", means: "x", formula: "f(e)" }],
      },
      /step x/,
    ],
    [
      "an input in another dimension than its field",
      { inputs: { e: { path: "thickness", unit: "bar", means: "e" } }, steps: [] },
      /a value in mm, but is read in bar/,
    ],
    [
      "a table's column in another dimension",
      { inputs: { e: { path: "calculation(c).x", unit: "bar", means: "e" } }, steps: [] },
      /has no "x"/,
    ],
  ])("%s", (_, more, message) => expect(bad(more)).toMatch(message));
  test("an empirical step is trusted in its units, not in its names", () => {
    expect(bad({ steps: [{ symbol: "x", unit: "bar", means: "x", formula: "3*e^2", empirical: true }] })).toBe("");
    expect(bad({ steps: [{ symbol: "x", unit: "bar", means: "x", formula: "3*f^2", empirical: true }] })).toMatch(
      /"f" is neither/,
    );
  });
  test("applied to what it is not about", () => {
    expect(
      problems({
        calculations: [made({})],
        rules: [making({ x: optional(quantityOf("calculation(c).x", "mm")) }, { kind: "plate" })],
      }).join(),
    ).toMatch(/applies to part, not to plate/);
  });
});

describe("registers and facts", () => {
  test("a row that leads nowhere", () => expect(problems({ owed: [owes("row", "part", "nothing")] })).toHaveLength(1));
  test("a row whose condition nobody owes", () => {
    expect(
      problems({
        owed: [owes("row", "part", "note", "now", { each: { kind: "part", when: [{ path: "note", equals: "x" }] } })],
      }),
    ).toHaveLength(1);
  });
  test("a fact that starts at no kind of the book", () => {
    const fact = {
      id: "f",
      title: "f",
      basis,
      reading: { type: "text" },
      owner: "design",
      statements: ["profile.x"],
    } as const;
    expect(problems({ facts: [fact] }).join()).toMatch(/does not start at book/);
  });
  test("one id twice", () =>
    expect(problems({ rules: [making({}), making({})] })).toEqual(['definitions: the id "r" is used twice']));
});

describe("a name that nobody defines, or two define, is a fault of the program", () => {
  // As a definition from elsewhere may be written: the compiler has not seen it.
  const slip = (text: string) => text as never;
  test("who acts", () =>
    expect(problems({ rules: [making({}, { owner: slip("welding coordinator") })] }).join()).toMatch(
      /^rule r: nobody is called "welding coordinator"; who acts is one of .*welding coordination/,
    ));
  test("a milestone", () =>
    expect(problems({ owed: [owes("row", "part", "note", slip("presure-test"))] }).join()).toMatch(
      /^requirement row: there is no milestone "presure-test"; there are order, .*pressure-test/,
    ));
  test("a parameter", () =>
    expect(read({ t: quantityOf("profile.lest", "mm") }).join()).toMatch(/there is no parameter "lest"/));
  test("a parameter that one profile lacks", () => {
    const profile = (id: string, ...names: readonly string[]) => ({
      id,
      title: id,
      parameters: Object.fromEntries(
        names.map((name) => [name, { value: "1", means: "", cautious: "high", basis } as const]),
      ),
    });
    expect(problems({ profiles: [profile("a", "least", "most"), profile("b", "least")] })).toEqual([
      'profile b: lacks the parameter "most"',
    ]);
    expect(problems({ profiles: [profile("a", "least"), profile("a", "least")] })).toEqual([
      'definitions: the profile "a" is defined twice',
    ]);
  });
  test("a parameter of two groups", () => {
    const group = (value: string) => ({ range: { value, means: "", cautious: "low", basis } as const });
    expect(() => joined(group("4"), group("2.5"))).toThrow('the parameter "range" of the profiles is defined twice');
    expect(Object.keys(joined(group("4"), { other: group("2").range }))).toEqual(["range", "other"]);
  });
  test("a table", () => {
    const table = { id: "t", title: "t", keys: [], columns: {}, rows: [], standard: "s" } as const;
    expect(problems({ tables: [table, table] })).toEqual(['definitions: the table "t" is defined twice']);
    expect(read({ t: quantityOf("table(tt).x", "mm") }).join()).toMatch(/there is no table "tt"/);
  });
});

describe("a name that is not known is said with the nearest path", () => {
  test.each([
    ["a field", textOf("roll"), 'path "roll" of part: part has no field "roll"; did you mean "role"?'],
    [
      "a parameter",
      quantityOf("profile.lest", "mm"),
      'there is no parameter "lest"; no profile defines it; did you mean "profile.least"?',
    ],
    [
      "a table",
      quantityOf("table(limit, role).x", "mm"),
      'there is no table "limit"; did you mean "table(limits, role).x"?',
    ],
    [
      "a column",
      quantityOf("table(limits, role).y", "mm"),
      'table limits has no "y"; did you mean "table(limits, role).x"?',
    ],
    ["a table asked with keys of its own", table("limit"), 'there is no table "limit"; did you mean "limits"?'],
    ["a kind", things("book.reports", {}), 'there is no kind "reports"; did you mean "book.report"?'],
  ])("%s", (_, input, said) => {
    const limits = {
      id: "limits",
      title: "l",
      standard: "s",
      keys: [{ name: "role", match: "equal" }],
      columns: { x: { means: "x", unit: "mm" } },
      rows: [],
    } as const;
    const least = { value: "1 mm", means: "", cautious: "high", basis } as const;
    const profiles = [{ id: "p", title: "p", parameters: { least } }];
    expect(problems({ rules: [making({ t: input })], tables: [limits], profiles }).join("\n")).toContain(said);
  });
  test("where none is near, with what there is", () =>
    expect(read({ t: textOf("zzzzzz") }).join()).toMatch(/part has no field "zzzzzz"; there are \w+, \w+/));
  test("of a symbol of a formula", () =>
    expect(nearestWords("preshure", ["pressure", "thickness"])).toBe('; did you mean "pressure"?'));
});

test("everything built in is listed once, with a severity and a basis", () => {
  const ids = builtInRules.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids).toEqual(
    expect.arrayContaining([
      "link-exact",
      "missing",
      "waiting",
      "table-row",
      "exception-fits",
      "basis-verified",
      "sheet-compared",
      "milestone-order",
    ]),
  );
});

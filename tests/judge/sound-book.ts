import { canPrecede } from "../../src/model/dates.ts";
import type { Fact } from "../../src/model/fact.ts";
import { calculation } from "../../src/model/calculation.ts";
import {
  anyOf,
  date,
  list as listOf,
  quantity as quantityOf,
  text as textOf,
  thing,
  things,
} from "../../src/model/input.ts";
import type { JsonObject } from "../../src/model/json.ts";
import { atLeast } from "../../src/model/quantity.ts";
import { rule } from "../../src/model/rule.ts";
import { basis, define, owes, type Records } from "../support/small-book.ts";
import { event, link, list, object, oneOf, quantity, text } from "../support/small-kinds.ts";

/** A small sound book with a dozen definitions of every sort, for planting faults in it. */
const kinds = {
  item: { pressure: quantity("bar", { due: "now", plausible: ["1 bar", "100 bar"] }), serial: text({ due: "now" }) },
  label: {
    item: link("item", { required: true }),
    pressure: quantity("bar", { due: "now" }),
    serial: text({ due: "now" }),
  },
  paper: { item: link("item", { required: true }), pressure: quantity("bar", { due: "now" }) },
  part: {
    item: link("item", { required: true }),
    thickness: quantity("mm", { due: "now", plausible: ["1 mm", "100 mm"] }),
    diameter: quantity("mm", { due: "now" }),
    heat: link("certificate#rows", { due: "now" }),
  },
  certificate: {
    issued: event({ due: "now" }),
    rows: list(
      object({
        heat: text({ required: true }),
        strength: quantity("MPa", { due: "now" }),
        thickness: quantity("mm", { due: "now" }),
      }),
      { rowKey: "heat", due: "now" },
    ),
  },
  joint: {
    part: link("part", { required: true }),
    welded: event({ due: "now" }),
    welder: link("welder", { due: "now" }),
    process: oneOf(["135", "141"], { due: "now" }),
  },
  welder: { name: text({ due: "now" }) },
  qualification: {
    welder: link("welder", { required: true }),
    process: oneOf(["135", "141"], { due: "now" }),
    from: event({ due: "now" }),
    until: text({ due: "now" }),
  },
  report: {
    method: oneOf(["VT", "RT"], { required: true }),
    date: event({ due: "now" }),
    rows: list(object({ joint: link("joint", { required: true }), result: oneOf(["ok", "bad"], { due: "now" }) }), {
      due: "now",
    }),
  },
};
const frame = { basis, owner: "shop", severity: "nonconformity", examples: [] } as const;
const say = (message: string) => ({ message, why: "w", hint: "h" });

const rules = [
  rule({
    ...frame,
    id: "plate-thick",
    title: "the plate is as thick as the part",
    kind: "part",
    inputs: {
      thickness: quantityOf("thickness", "mm"),
      heat: thing("heat", { thickness: quantityOf("thickness", "mm") }),
    },
    *check({ thickness, heat }) {
      if (atLeast(heat.thickness, thickness) === "no") yield { at: "thickness", on: heat, ...say("plate too thin") };
    },
  }),
  rule({
    ...frame,
    id: "row-strong",
    title: "the heat is strong enough",
    kind: "certificate#rows",
    inputs: { strength: quantityOf("strength", "MPa") },
    *check({ strength }) {
      if (strength.value < 200) yield { at: "strength", ...say("too weak") };
    },
  }),
  rule({
    ...frame,
    id: "certified-before",
    title: "certified before it was welded",
    kind: "joint",
    inputs: { welded: date("welded"), issued: date("part.heat.record.issued") },
    *check({ welded, issued }) {
      if (canPrecede(issued, welded) === "no") yield { at: "welded", ...say("welded before certified") };
    },
  }),
  rule({
    ...frame,
    id: "qualified",
    title: "welded by a qualified welder",
    kind: "joint",
    inputs: {
      welded: date("welded"),
      process: textOf("process"),
      welder: thing("welder", {
        qualifications: listOf(
          thing("<qualification:welder>", { process: textOf("process"), from: date("from"), until: textOf("until") }),
        ),
      }),
    },
    *check({ welded, process, welder }) {
      const fits = welder.qualifications.filter(
        (one) => one.process === process && canPrecede(one.from, welded) === "yes" && welded.text <= one.until,
      );
      if (fits.length === 0)
        yield { at: "welded", on: welder, name: process, ...say(`welder ${welder.$.id} not qualified`) };
    },
  }),
  rule({
    ...frame,
    id: "tested-after",
    title: "tested after it was welded",
    kind: "joint",
    inputs: {
      welded: date("welded"),
      tests: listOf(thing('<report:rows[].joint>[record.method="VT"]', { date: date("record.date") })),
    },
    *check({ welded, tests }) {
      if (tests.some((one) => canPrecede(welded, one.date) === "no"))
        yield { at: "welded", ...say("tested before it was welded") };
    },
  }),
  rule({
    ...frame,
    id: "result-good",
    title: "every result is good",
    kind: "report",
    inputs: { results: listOf(textOf("rows[].result")) },
    *check({ results }) {
      if (results.includes("bad")) yield { at: "results", ...say("a bad result") };
    },
  }),
  rule({
    ...frame,
    id: "weight",
    title: "all parts together",
    kind: "book",
    inputs: { parts: anyOf(things("book.part", { thickness: quantityOf("thickness", "mm") })) },
    *check({ parts }) {
      if (parts.reduce((sum, { thickness }) => sum + thickness.value, 0) > 150)
        yield { at: "parts", ...say("too heavy") };
    },
  }),
  rule({
    ...frame,
    id: "serial-form",
    title: "a serial begins with S",
    kind: "item",
    inputs: { serial: textOf("serial") },
    *check({ serial }) {
      if (!serial.startsWith("S")) yield { at: "serial", ...say("no S") };
    },
  }),
];

const wall = calculation({
  id: "wall",
  title: "Wall",
  basis,
  covers: "a test",
  appliesTo: { kind: "part" },
  inputs: {
    p: { path: "item.pressure", unit: "MPa", means: "pressure" },
    D: { path: "diameter", unit: "mm", means: "diameter" },
    R: { path: "heat.strength", unit: "MPa", means: "strength" },
    e: { path: "thickness", unit: "mm", means: "thickness" },
  },
  steps: [{ symbol: "t", unit: "mm", means: "required", formula: "p*D/R" }],
  limits: [{ left: "D", relation: "<=", right: "'3000 mm'", means: "small enough" }],
  accept: [{ left: "e", relation: ">=", right: "t", means: "thick enough", accuses: "e" }],
  compared: [{ symbol: "t", unsafe: "low" }],
  adopted: "e",
  examples: [],
});

const fact = (id: string, title: string, reading: Fact["reading"], field: string, of: readonly string[]): Fact => ({
  id,
  title,
  basis,
  reading,
  owner: "design",
  statements: of.map((kind) => `book.${kind}.${field}`),
});

export const definitions = define({
  kinds,
  rules,
  calculations: [wall],
  facts: [
    fact("pressure-agrees", "the pressure", { type: "quantity", unit: "bar" }, "pressure", ["item", "label", "paper"]),
    fact("serial-agrees", "the serial", { type: "text" }, "serial", ["item", "label"]),
  ],
  owed: [
    owes("book-item", "book", "book.item"),
    owes("book-parts", "book", "book.part"),
    owes("item-label", "item", "<label:item>"),
    owes("item-paper", "item", "<paper:item>"),
    owes("welder-qualified", "joint", "welder.<qualification:welder>"),
    owes("joint-visual", "joint", '<report:rows[].joint>[record.method="VT"]'),
    owes("part-sheet", "part", '<calculation-sheet:subject>[calculation="wall"]'),
  ],
});

const joint = (part: string, welder: string, process: string): JsonObject => ({
  part,
  welder,
  process,
  welded: "2026-03-10",
});
/** t = 1 · 1000 / 250 = 4 mm */
const sheet = (part: string): JsonObject => ({
  calculation: "wall",
  subject: `part:${part}`,
  inputs: [
    { symbol: "p", value: "1 MPa" },
    { symbol: "D", value: "1000 mm" },
    { symbol: "R", value: "250 MPa" },
    { symbol: "e", value: "8 mm" },
  ],
  results: [{ symbol: "t", value: "4.0 mm" }],
  adopted: "8 mm",
});
const part = (heat: string): JsonObject => ({ item: "V1", thickness: "8 mm", diameter: "1000 mm", heat });

export const sound: Records = {
  item: { V1: { pressure: "10 bar", serial: "S-17" } },
  label: { N1: { item: "V1", pressure: "10 bar", serial: "S-17" } },
  paper: { D1: { item: "V1", pressure: "1.0 MPa" } },
  part: { SHELL: part("CRT#H1"), "HEAD-A": part("CRT#H2"), "HEAD-B": part("CRT#H2") },
  certificate: {
    CRT: {
      issued: "2026-02-01",
      rows: [
        { heat: "H1", strength: "250 MPa", thickness: "8 mm" },
        { heat: "H2", strength: "250 MPa", thickness: "8 mm" },
      ],
    },
  },
  joint: { JA: joint("SHELL", "WAB", "135"), JC: joint("HEAD-A", "WCD", "141"), JE: joint("HEAD-B", "WCD", "141") },
  welder: { WAB: { name: "A" }, WCD: { name: "B" } },
  qualification: {
    QAB: { welder: "WAB", process: "135", from: "2025-01-01", until: "2027-01-01" },
    QCD: { welder: "WCD", process: "141", from: "2025-01-01", until: "2027-01-01" },
  },
  report: {
    VT1: {
      method: "VT",
      date: "2026-03-20",
      rows: [
        { joint: "JA", result: "ok" },
        { joint: "JC", result: "ok" },
        { joint: "JE", result: "ok" },
      ],
    },
  },
  "calculation-sheet": { CSA: sheet("SHELL"), CSC: sheet("HEAD-A"), CSE: sheet("HEAD-B") },
};

/** A planted fault: what is set (or, undefined, taken out) at a path of a record, and the root it must give. */
export interface Planted {
  readonly at: readonly (string | number)[];
  readonly to?: unknown;
  readonly root: string;
}

const set = (path: string, to: unknown, root: string): Planted => ({
  at: path.split("/").map((step) => (/^\d+$/.test(step) ? Number(step) : step)),
  to,
  root,
});
const out = (path: string, root: string): Planted => ({
  at: path.split("/").map((step) => (/^\d+$/.test(step) ? Number(step) : step)),
  root,
});

export const faults: readonly Planted[] = [
  out("item/V1/pressure", "missing|item:V1|pressure"),
  out("label/N1/serial", "missing|label:N1|serial"),
  out("part/SHELL/thickness", "missing|part:SHELL|thickness"),
  out("part/HEAD-A/heat", "missing|part:HEAD-A|heat"),
  out("certificate/CRT/issued", "missing|certificate:CRT|issued"),
  out("certificate/CRT/rows/0/strength", "missing|certificate:CRT|rows (H1) strength"),
  out("joint/JA/welder", "missing|joint:JA|welder"),
  out("joint/JC/welded", "missing|joint:JC|welded"),
  out("qualification/QAB", "missing|welder:WAB|qualification"),
  out("welder/WCD/name", "missing|welder:WCD|name"),
  out("report/VT1/date", "missing|report:VT1|date"),
  out("report/VT1/rows/1/result", "missing|report:VT1|rows (1) result"),
  out("label/N1", "missing|book|label"),
  out("paper/D1", "missing|book|paper"),
  out("calculation-sheet/CSA", "missing|part:SHELL|calculation-sheet wall"),
  out("certificate/CRT", "missing|certificate:CRT"),
  out("welder/WAB", "missing|welder:WAB"),
  out("part/HEAD-B", "missing|part:HEAD-B"),
  out("item/V1", "missing|item:V1"),
  set("item/V1/pressure", "10,0 bar", "quantity-form|item:V1|pressure"),
  set("item/V1/pressure", "120 bar", "value-plausible|item:V1|pressure"),
  set("label/N1/pressure", "12 bar", "pressure-agrees|book|"),
  set("label/N1/serial", "S-71", "serial-agrees|book|"),
  set("item/V1/serial", "17", "serial-form|item:V1|"),
  set("part/SHELL/thickness", "0.8 mm", "value-plausible|part:SHELL|thickness"),
  set("part/SHELL/thickness", "8 kg", "quantity-form|part:SHELL|thickness"),
  set("part/SHELL/thickness", "3 mm", "wall/inputs|calculation-sheet:CSA|input e"),
  set("part/HEAD-B/diameter", "3100 mm", "wall/inputs|calculation-sheet:CSE|input D"),
  set("certificate/CRT/rows/0/strength", "150 MPa", "row-strong|certificate:CRT|rows (H1)"),
  set("certificate/CRT/rows/1/thickness", "6 mm", "plate-thick|certificate:CRT|rows (H2)"),
  set("certificate/CRT/issued", "2026-08-01", "event-recorded|certificate:CRT|issued"),
  set("part/SHELL/heat", "CRT#H9", "link-row|certificate:CRT|H9"),
  set("part/SHELL/heat", "crt#H1", "link-form|part:SHELL|heat"),
  set("joint/JA/welder", "W-AB", "link-exact|joint:JA|welder"),
  set("joint/JE/welder", "WXX", "missing|welder:WXX"),
  set("joint/JA/welded", "2026-03-21", "tested-after|joint:JA|"),
  set("joint/JC/welded", "2026-13-10", "date-form|joint:JC|welded"),
  set("joint/JE/process", "135", "qualified|welder:WCD|135"),
  set("qualification/QAB/until", "2026-01-01", "qualified|welder:WAB|135"),
  set("report/VT1/rows/0/result", "bad", "result-good|report:VT1|"),
  set("report/VT1/rows/2/joint", "J-E", "link-exact|report:VT1|rows (2) joint"),
  set("calculation-sheet/CSC/inputs/0/value", "2 MPa", "wall/inputs|calculation-sheet:CSC|input p"),
  set("calculation-sheet/CSC/results/0/value", "3 mm", "wall/results|calculation-sheet:CSC|result t"),
  set("calculation-sheet/CSE/adopted", "9 mm", "wall/results|calculation-sheet:CSE|adopted e"),
  set("calculation-sheet/CSE/inputs/1/symbol", "d", "wall/inputs|calculation-sheet:CSE|unknown d"),
  out("part/SHELL/diameter", "missing|part:SHELL|diameter"),
  out("label/N1/pressure", "missing|label:N1|pressure"),
  out("paper/D1/pressure", "missing|paper:D1|pressure"),
  out("item/V1/serial", "missing|item:V1|serial"),
  out("joint/JE/process", "missing|joint:JE|process"),
  out("qualification/QCD/process", "missing|qualification:QCD|process"),
  out("qualification/QCD/from", "missing|qualification:QCD|from"),
  out("qualification/QAB/until", "missing|qualification:QAB|until"),
  out("qualification/QCD", "missing|welder:WCD|qualification"),
  out("welder/WCD", "missing|welder:WCD"),
  out("calculation-sheet/CSC", "missing|part:HEAD-A|calculation-sheet wall"),
  out("report/VT1/rows/0/result", "missing|report:VT1|rows (0) result"),
  out("certificate/CRT/rows/1/thickness", "missing|certificate:CRT|rows (H2) thickness"),
  set("paper/D1/pressure", "0.9 MPa", "pressure-agrees|book|"),
  set("paper/D1/pressure", "1 MPa gauge", "quantity-form|paper:D1|pressure"),
  set("qualification/QCD/from", "2026-03-11", "qualified|welder:WCD|141"),
  set("joint/JC/part", "HEAD-Z", "missing|part:HEAD-Z"),
  set("joint/JA/part", "S-HELL", "link-exact|joint:JA|part"),
  set("label/N1/item", "V9", "missing|item:V9"),
  set("paper/D1/item", "V-1", "link-exact|paper:D1|item"),
  set("calculation-sheet/CSA/subject", "part:SHELF", "missing|part:SHELF"),
  set("calculation-sheet/CSE/inputs/2/value", "260 MPa", "wall/inputs|calculation-sheet:CSE|input R"),
  set("calculation-sheet/CSA/inputs/3/value", "8 bar", "wall/inputs|calculation-sheet:CSA|input e"),
  set("report/VT1/rows/0/joint", "JZZ", "missing|joint:JZZ"),
  set("qualification/QAB/welder", "WA8", "link-exact|qualification:QAB|welder"),
  set("calculation-sheet/CSA/calculation", "wal", "sheet-compared|calculation-sheet:CSA|"),
];

/** The records with faults planted in them. */
export function plant(planted: readonly Planted[]): Records {
  const records = structuredClone(sound) as Record<string, Record<string, Record<string, unknown>>>;
  for (const { at, ...fault } of planted) {
    const last = at[at.length - 1];
    let here: unknown = records;
    for (const step of at.slice(0, -1)) here = (here as Record<string, unknown> | undefined)?.[String(step)];
    if (here === undefined || here === null || last === undefined) continue;
    if ("to" in fault) (here as Record<string, unknown>)[String(last)] = fault.to;
    else if (Array.isArray(here)) here.splice(Number(last), 1);
    else Reflect.deleteProperty(here, String(last));
  }
  return records as Records;
}

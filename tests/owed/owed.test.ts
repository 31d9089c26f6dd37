import { describe, expect, test } from "vitest";
import { milestoneDays } from "../../src/model/milestone-days.ts";
import { owedItems } from "../../src/owed/items.ts";
import { firmsIn, owedList, type Asked } from "../../src/owed/list.ts";
import { owedText } from "../../src/owed/text.ts";
import { quantity as quantityOf } from "../../src/model/input.ts";
import { rule } from "../../src/model/rule.ts";
import { answering, basis, define, judged, owes, type SmallBook } from "../support/small-book.ts";
import { day, event, link, list, object, quantity, text } from "../support/small-kinds.ts";

const kinds = {
  book: { title: text(), shop: link("firm", { acts: ["shop", "document control"] }) },
  firm: { name: text({ required: true }) },
  original: { path: text() },
  joint: { thickness: quantity("mm", { due: "order" }), note: text({ due: "welding" }), plate: link("plate") },
  plate: {
    mill: link("firm", { acts: ["supplier"] }),
    grade: text({ due: "order" }),
    source: object({ original: link("original") }),
    rows: list(object({ strength: text({ due: "order" }) }), { rowKey: "strength" }),
  },
  report: { joint: link("joint", { required: true }), tester: link("firm", { acts: ["testing"] }), made: event() },
  step: { joint: link("joint"), planned: day({ date: "plan" }), evidence: link("report", { due: "welding" }) },
};

const issue = {
  state: "interim",
  milestones: [
    { name: "order", reached: "2026-05-01" },
    { name: "welding", reached: "2026-08-01" },
    { name: "release" },
  ],
};

const owed = [
  owes("row-report", "joint", "<report:joint>", "release", { owner: "testing" }),
  owes("row-plate", "joint", "plate", "order", { owner: "purchasing" }),
];

const thick = rule({
  id: "thick-enough",
  title: "thick enough",
  basis,
  kind: "joint",
  severity: "gap",
  owner: "design",
  inputs: { thickness: quantityOf("thickness", "mm") },
  *check(_, joint) {
    yield { at: "thickness", message: `joint ${joint.name} needs a drawing`, why: "w", hint: "h" };
  },
  examples: [],
});

function listed(records: SmallBook["records"], asked: Asked = {}, more: Partial<SmallBook> = {}) {
  const plainly = define({ kinds, owed, rules: [thick] });
  const labels: Readonly<Record<string, string>> = { firm: "name", joint: "thickness" };
  const labelled = [...plainly.kinds.values()].map((kind) => {
    const label = labels[kind.name];
    return [kind.name, label === undefined ? kind : { ...kind, label }] as const;
  });
  const book = judged(
    { ...plainly, kinds: new Map(labelled) },
    {
      records,
      issue,
      book: { title: "Small vessel", shop: "OURS" },
      ...more,
    },
  );
  const items = owedItems(book);
  return { book, items, text: owedText(owedList(items, milestoneDays(book.issue), asked), ["HEAD"]) };
}

const firms = { OURS: { name: "Our works" }, MILL: { name: "The mill" } };

describe("what is owed", () => {
  const records = {
    firm: firms,
    original: { "O-1": { path: "files/p1.pdf" } },
    joint: { J1: { plate: "P1", thickness: "8 mm" }, J2: {} },
    plate: { P1: { mill: "MILL", source: { original: "O-1", page: 2 } } },
    step: { S1: { joint: "J1", planned: "2026-07-15", evidence: "R9" } },
  };

  test("stands by who must act and by day, with thing, paper and firm", () => {
    expect(listed(records).text.split("\n")).toEqual([
      "HEAD",
      "",
      "design: 1",
      "  at once",
      "    joint J1 needs a drawing",
      "",
      "document control, Our works: 4",
      "  order, reached on 2026-05-01",
      "    joint J2: thickness",
      "    plate P1: grade (original O-1, page 2 (files/p1.pdf); paper of The mill)",
      "  welding, planned for 2026-08-01",
      "    joint J1, 8 mm: note",
      "    joint J2: note",
      "",
      "purchasing: 1",
      "  order, reached on 2026-05-01",
      "    joint J2: plate",
      "",
      "testing: 1",
      "  welding, planned for 2026-08-01",
      "    report R9, named by step S1 (planned for 2026-07-15)",
      "",
      "7 things are missing: 4 due, 3 not due yet",
      "",
    ]);
  });

  test("only what is asked for, and how much there is beside it", () => {
    const { text: until } = listed(records, { until: "order", owner: "document control" });
    expect(until.split("\n").slice(2)).toEqual([
      "document control, Our works: 2",
      "  order, reached on 2026-05-01",
      "    joint J2: thickness",
      "    plate P1: grade (original O-1, page 2 (files/p1.pdf); paper of The mill)",
      "",
      "2 things are missing: 2 due, 0 not due yet; 5 more things are owed beside this list",
      "",
    ]);
    expect(listed(records, { owner: "Our works" }).text).toContain("document control, Our works: 4\n");
    expect(listed(records, { owner: "OURS" }).text).toContain("document control, Our works: 4\n");
    // The firm that has to send the paper, by id, by name, in capitals or not.
    for (const owner of ["The mill", "MILL", "the MILL"])
      expect(listed(records, { owner }).text).toContain(
        "plate P1: grade (original O-1, page 2 (files/p1.pdf); paper of",
      );
    expect(listed(records, { owner: "Document Control" }).text).toContain("document control, Our works: 4\n");
    expect(firmsIn(listed(records).items)).toEqual(["Our works (OURS)", "The mill (MILL)"]);
    expect(listed(records, { owner: "supplier" }).text).toBe(
      "HEAD\n\nno things are missing: 0 due, 0 not due yet; 7 more things are owed beside this list\n",
    );
  });

  test("a row that lacks a value names the row and its own firm before that of the book", () => {
    const rows = [{ row: "1", strength: "400" }, { row: "2" }];
    const { items } = listed({ firm: firms, plate: { P1: { grade: "P265", mill: "MILL", rows } } });
    expect(items.map(({ what, thing, paperOf }) => [what, thing, paperOf.map(({ id }) => id)])).toEqual([
      ["strength", "plate P1, row 2", ["MILL"]],
    ]);
  });

  test("what a finding explains says by which, and what an exception accepts is owed by nobody", () => {
    const lost = listed(
      { firm: firms, joint: { J1: { thickness: "8 mm", plate: "P1" } } },
      {},
      { unreadable: ["x.json"] },
    );
    expect(lost.text).toContain("plate P1, named by joint J1");
    const records = { firm: firms, joint: { J1: { note: "n", plate: "P1" } }, plate: { P1: { grade: "g" } } };
    const waiver = answering(listed(records).book, ["missing|joint:J1|thickness"]);
    const accepted = listed({ ...records, waiver: { "WV-1": waiver } });
    expect(accepted.items.filter(({ standing }) => standing === "accepted").map(({ because }) => because)).toEqual([
      ["accepted by waiver WV-1"],
    ]);
    expect(accepted.text).toContain(
      "missing and accepted: nobody owes it\n  joint J1: thickness (accepted by waiver WV-1)",
    );
  });
});

describe("milestones", () => {
  test("a day after the cut-off is planned, on it or before it reached; no readable day is neither", () => {
    const issueOf = (days: readonly (string | undefined)[]) => ({
      value: {
        dataCutOff: "2026-06-05",
        milestones: days.map((reached, index) => ({ name: `m${index}`, ...(reached !== undefined && { reached }) })),
      },
    });
    expect(milestoneDays(issueOf(["2026-06-04", "2026-06-05", "2026-06-06", undefined, "June"]))).toEqual([
      { name: "m0", day: "2026-06-04", reached: true },
      { name: "m1", day: "2026-06-05", reached: true },
      { name: "m2", day: "2026-06-06", reached: false },
      { name: "m3", reached: false },
      { name: "m4", reached: false },
    ]);
    expect(milestoneDays({ value: { milestones: "none" } })).toEqual([]);
  });
});

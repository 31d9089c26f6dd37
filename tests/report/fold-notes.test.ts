import { address } from "../support/address.ts";
import { findingKey } from "../../src/model/finding-key.ts";
import { expect, test } from "vitest";
import type { Severity } from "../../src/model/finding.ts";
import type { Address } from "../../src/model/record.ts";
import { foldNotes } from "../../src/report/fold-notes.ts";
import type { Placed } from "../../src/report/report.ts";
import { ownChoice } from "../../src/model/basis.ts";

const placed = (id: string, severity: Severity = "note", rule = "used", exception: Address | null = null): Placed => ({
  finding: {
    key: findingKey(rule, `part:${id}`, ""),
    rule,
    severity,
    verdict: "failed",
    subject: { kind: "part", id },
    place: { file: "parts.json", pointer: `/records/${id}` },
    message: `nothing names part ${id}`,
    why: "why",
    hint: "hint",
    basis: ownChoice("a test"),
    owner: "shop",
    due: null,
    digest: "",
    related: [],
    waiting: [],
    exception,
    accuses: [],
  },
  position: { line: Number(id), column: 1, length: 1 },
  line: undefined,
  sheet: undefined,
  related: [],
  waits: [],
});
const messages = (all: readonly Placed[]) => foldNotes(all).map(({ finding }) => finding.message);

test("many notes of one check are one, with the places of all others", () => {
  const [one, ...more] = foldNotes(["1", "2", "3", "4", "5"].map((id) => placed(id)));
  expect(more).toEqual([]);
  expect(one?.finding.message).toBe("nothing names part 1, and 4 more notes say the same of others");
  expect(one?.related.map(({ related, position }) => [related.subject?.id, position.line])).toEqual([
    ["2", 2],
    ["3", 3],
    ["4", 4],
    ["5", 5],
  ]);
});

test("few notes, notes of several checks, what blocks and what is answered stand for themselves", () => {
  expect(messages(["1", "2", "3"].map((id) => placed(id)))).toHaveLength(3);
  expect(messages(["1", "2", "3", "4"].map((id) => placed(id, "note", `check-${id}`)))).toHaveLength(4);
  expect(messages(["1", "2", "3", "4"].map((id) => placed(id, "gap")))).toHaveLength(4);
  expect(messages(["1", "2", "3", "4"].map((id) => placed(id, "note", "used", address("waiver:W1"))))).toHaveLength(4);
});

import { describe, expect, test } from "vitest";
import { allRecords, type Change } from "../support/changes.ts";
import { demoBook, judgeChanged, newRoots, sound } from "../support/demo-book.ts";

const records = allRecords(demoBook).filter(({ kind }) => kind !== "book" && kind !== "issue");
const kinds = [...new Set(records.map(({ kind }) => kind))].sort();

/** What may go unnoticed, and why. */
const unnoticed: Readonly<Record<string, string>> = {
  "inspection-step:ITP-290":
    "the last step of the plan: nothing comes after it and nothing names it; how far a plan goes is the maker's and the body's decision",
};

function rootsWithout(changes: readonly Change[]) {
  const { judged, fatal } = judgeChanged(demoBook, changes);
  expect(fatal).toEqual([]);
  return judged === null ? [] : newRoots(judged, sound);
}

describe("a record that is taken out is missed once, by name", () => {
  test.each(records)("$kind $id", ({ kind, id }) => {
    const roots = rootsWithout([{ remove: `${kind}:${id}` }]);
    if (unnoticed[`${kind}:${id}`] !== undefined || unnoticed[kind] !== undefined) {
      expect(roots).toEqual([]);
      return;
    }
    expect(roots.map(({ message }) => message)).toHaveLength(1);
    const [root] = roots;
    const named = `${root?.key ?? ""} ${root?.message ?? ""} ${root?.why ?? ""}`;
    const met = sound.owed
      .filter((one) => one.evidence.some((record) => record.kind === kind && record.id === id))
      .map(({ requirement }) => requirement.title);
    expect(named.includes(id) || met.some((title) => named.includes(title))).toBe(true);
  });
});

describe("a kind that is taken out whole is missed once", () => {
  test.each(kinds)("%s", (kind) => {
    const roots = rootsWithout(
      records.filter((record) => record.kind === kind).map(({ id }) => ({ remove: `${kind}:${id}` })),
    );
    if (unnoticed[kind] !== undefined) expect(roots).toEqual([]);
    else expect(roots.map(({ message }) => message)).toHaveLength(1);
  });
});

describe("without book.json or issue.json there is nothing to judge", () => {
  test.each(["book.json", "issue.json"])("%s", (file) => {
    const { judged, fatal } = judgeChanged(demoBook, [{ file, gone: true }]);
    expect(judged).toBeNull();
    expect(fatal.map(({ message }) => message).join()).toContain(file);
  });
});

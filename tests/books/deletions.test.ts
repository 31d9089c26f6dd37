import { describe, expect, test } from "vitest";
import { expectKindMissed, expectMissed, kindsOf, takeable } from "../support/deletions.ts";
import { demoBook, judgeChanged, sound } from "../support/demo-book.ts";

/** Of the shelves only what the book reaches. */
const records = takeable(demoBook).filter(({ kind, id }) => sound.graph.byKind.get(kind)?.has(id));

/** What may go unnoticed, and why. */
const unnoticed: Readonly<Record<string, string>> = {
  "inspection-step:ITP-290":
    "the last step of the plan: nothing comes after it and nothing names it; how far a plan goes is the maker's and the body's decision",
};

describe("a record that is taken out is missed once, by name", () => {
  test.each(records)("$kind $id", (record) => {
    expectMissed(demoBook, sound, record, unnoticed[`${record.kind}:${record.id}`]);
  });
});

describe("a kind that is taken out whole is missed once", () => {
  test.each(kindsOf(records))("%s", (kind) => {
    // The register asks the book for 3 documents by their sort.
    expectKindMissed(demoBook, sound, kind, kind === "document" ? 3 : 1);
  });
});

describe("without book.json or issue.json there is nothing to judge", () => {
  test.each(["book.json", "issue.json"])("%s", (file) => {
    const { judged, fatal } = judgeChanged(demoBook, [{ file, gone: true }]);
    expect(judged).toBeNull();
    expect(fatal.map(({ message }) => message).join()).toContain(file);
  });
});

import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { blocks } from "../../src/model/finding.ts";
import { judgeBook, readBook } from "../../src/pipeline.ts";
import { boilerBook, demoBook, interimBook, judgedOnce, sound, soundBoiler } from "../support/demo-book.ts";

const judged = sound;
const books = [
  ["air receiver", demoBook, judged],
  ["boiler", boilerBook, soundBoiler()],
] as const;

describe.each(books)("the demonstration book of the %s", (_, dir, own) => {
  test("has no finding but notes, and what its exceptions answer", () => {
    const open = own.findings.filter(({ severity, exception }) => severity !== "note" && exception === null);
    expect(open.map(({ key, message }) => `${key}: ${message}`)).toEqual([]);
  });

  test("leaves nothing unjudged", () => {
    const open = own.outcomes.filter(({ verdict }) => verdict === "not judged");
    expect(open.map(({ definition, subject }) => `${definition} ${subject?.kind ?? ""} ${subject?.id ?? ""}`)).toEqual(
      [],
    );
  });

  test("judging twice gives the same", () => {
    const again = judgeBook(readBook(dir));
    expect(again.findings).toEqual(own.findings);
    expect(again.outcomes).toEqual(own.outcomes);
    expect(again.fingerprint).toBe(own.fingerprint);
  });
});

test("the boiler's deviation answers what was found, and nothing else is answered", () => {
  const answered = books[1][2].findings.filter(({ exception }) => exception !== null);
  expect(answered.map(({ key, exception }) => [key, exception]).sort()).toEqual([
    [
      "dimension-check-rows-accepted|dimension-check:DIM-01|rows (bore of tube holes, P04, pass 3, row 7, place 4)",
      "deviation:DEV-01",
    ],
  ]);
});

describe("the same book in mid-manufacture", () => {
  const interim = judgedOnce(interimBook);

  test("has nothing overdue", () => {
    expect(interim.state).toBe("interim");
    expect(interim.findings.filter(blocks).map(({ key, message }) => `${key}: ${message}`)).toEqual([]);
  });

  test("counts what is not due, and names the milestone it waits for", () => {
    expect(interim.counts.notDue).toBeGreaterThan(10);
    const waits = new Set(
      interim.outcomes.flatMap(({ because }) => (because?.type === "not due" ? [because.milestone] : [])),
    );
    expect([...waits]).toEqual(expect.arrayContaining(["pressure-test", "final-inspection"]));
    expect(
      interim.outcomes.filter(({ verdict, because }) => verdict === "not judged" && because?.type !== "not due"),
    ).toEqual([]);
  });
});

test("the starter book says first what is missing", () => {
  const starter = judgeBook(readBook(join(import.meta.dirname, "../../records")));
  const open = starter.findings.filter(blocks);
  expect(open.length).toBeGreaterThan(0);
  expect(open.every(({ severity }) => severity === "gap")).toBe(true);
  expect(open.map(({ message }) => message)).toContain("the book holds no equipment");
});

import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { blocks } from "../../src/model/finding.ts";
import { judgeBook, readBook } from "../../src/pipeline.ts";
import { demoBook, interimBook } from "../support/demo-book.ts";

const judged = judgeBook(readBook(demoBook));

describe("the demonstration book", () => {
  test("has no finding but notes", () => {
    expect(
      judged.findings.filter(({ severity }) => severity !== "note").map(({ key, message }) => `${key}: ${message}`),
    ).toEqual([]);
  });

  test("leaves nothing unjudged", () => {
    const open = judged.outcomes.filter(({ verdict }) => verdict === "not judged");
    expect(open.map(({ definition, subject }) => `${definition} ${subject?.kind ?? ""} ${subject?.id ?? ""}`)).toEqual(
      [],
    );
  });

  test("is of real size: every rule and every calculation applies to something, or is known not to", () => {
    const used = new Set(
      judged.outcomes.filter(({ verdict }) => verdict === "passed").map(({ definition }) => definition.split("/")[0]),
    );
    const idle = [...judged.definitions.rules, ...judged.definitions.calculations]
      .map(({ id }) => id)
      .filter((id) => !used.has(id));
    expect(idle.sort()).toEqual(knownIdle);
  });

  test("judging twice gives the same", () => {
    const again = judgeBook(readBook(demoBook));
    expect(again.findings).toEqual(judged.findings);
    expect(again.outcomes).toEqual(judged.outcomes);
    expect(again.fingerprint).toBe(judged.fingerprint);
  });
});

/** Definitions that an air receiver without these things does not exercise; each has its examples and, where possible, a fault. */
const knownIdle: readonly string[] = [
  "access-tube",
  "burner-heat-input",
  "deviation-signatures",
  "feed-pump-duty",
  "fitting-compared-by-another",
  "fitting-pressure",
  "fitting-signatures",
  "fitting-temperature",
  "flat-plate",
  "function-test-accepted",
  "furnace",
  "furnace-hoop",
  "gauge-range",
  "gauge-red-mark",
  "heat-balance",
  "heat-treatment-after-welding",
  "heated-equipment-category",
  "high-water-limiter-level",
  "level-indicator-range",
  "limiter-locks",
  "low-water-limiter-level",
  "metal-temperature",
  "opening-judged",
  "pressure-controller-setting",
  "pressure-limiter-setting",
  "reversal-chamber",
  "saturation",
  "shell-opening",
  "smoke-tube",
  "stay",
  "stay-tube",
  "stay-tubes-welded",
  "stayed-flat-plate",
  "steam-relief",
  "steam-safety-valve",
  "tube-end-group-after-order",
  "tube-end-group-compared-by-another",
  "tube-end-group-signatures",
  "tube-end-operator-role",
  "tube-end-welder-qualified",
  "tube-end-welder-role",
  "tube-ends-accepted",
  "tube-ends-counted",
  "tube-hole",
  "tube-nest",
  "tube-pull-out",
  "tube-temperature",
  "ultrasonic-extent",
  "unreinforced-opening",
  "wall-reduction",
  "water-levels",
];

describe("the same book in mid-manufacture", () => {
  const interim = judgeBook(readBook(interimBook));

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

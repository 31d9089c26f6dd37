import { calculationKey } from "../../../src/model/calculation-key.ts";
import { expect, test } from "vitest";
import { judgedOnce, laidOutOnce, vesselBook } from "../../support/demo-book.ts";
import { linksIn, wordsIn } from "./words.ts";

const judged = judgedOnce(vesselBook);
const { pages } = await laidOutOnce(vesselBook);
const pageAt = (url: string) => {
  const found = pages.find((page) => page.url === url);
  if (found === undefined) throw new Error(`no page ${url}`);
  const { under, blocks } = found;
  return { words: wordsIn([under, blocks]), links: linksIn(blocks) };
};

/** Which record each limit is held in, by the names in the book of the second vessel. */
test.each([
  ["calculation/test-limits.equipment.TQ423-02.html", "pressure-test/r-HYD-01.html", "at least 15.80 bar"],
  ["calculation/tested-length.joint.C1_RT.html", "ndt-report/r-RT-02.html", "at least 109.2 mm"],
  ["calculation/image-quality.joint.C1.html", "ndt-report/r-RT-02.html", "at least W15"],
  ["calculation/valve-settings.equipment.TQ423-02.html", "safety-valve/r-SV-01.html", "at most 11.550 bar"],
  ["calculation/valve-bench-limits.safety-valve.SV-01.html", "safety-valve/r-SV-01.html", "at least 10.670 bar"],
])("%s leads to %s, and back", (calculation, record, limit) => {
  const from = pageAt(calculation);
  expect(from.words).toContain("Where it is used");
  expect(from.words).toContain(limit);
  expect(from.links).toContain(record);
  const back = pageAt(record);
  expect(back.words).toContain("What is measured here is held against these limits");
  expect(back.words).toContain(limit);
  expect(back.links).toContain(calculation);
});

test("a result says which checks and calculations read it, each with its verdict", () => {
  for (const { url, blocks } of pages.filter((page) => page.url.startsWith("calculation/"))) {
    const at = blocks.findIndex((block) => block.type === "heading" && block.text === "Where it is used");
    // What was held against something makes it more than information, whoever reads it.
    const given = wordsIn(pages.find((page) => page.url === url)?.under ?? "").includes("of which nothing is asked");
    if (at < 0) expect(given, url).toBe(false);
    else {
      const rest = blocks.slice(at + 1);
      const said = rest.some((block) => block.type === "judged");
      if (wordsIn(rest).includes("it is given for information")) expect(said, url).toBe(false);
    }
  }
  const testLimits = calculationKey("test-limits", { kind: "equipment", id: "TQ423-02" }, "");
  const read = new Set(judged.outcomes.flatMap(({ results = [] }) => results));
  expect(read.has(testLimits)).toBe(true);
  expect(judged.outcomes.filter(({ results }) => results?.includes(testLimits))).toHaveLength(2);
});

test("figures of which nothing is asked are neither passed nor a gap", () => {
  const { words } = pageAt("calculation/test-limits.equipment.TQ423-02.html");
  expect(words).toContain("The calculation gives figures of which nothing is asked.");
  expect(words).toContain(
    "These figures are ours. No sheet of the maker stands beside them, so nothing is compared here.",
  );
  expect(wordsIn(pages.map(({ under }) => under))).toContain("more give figures of which nothing is asked");
});

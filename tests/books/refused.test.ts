import { expect, test } from "vitest";
import { layOut, traceRecord } from "../../src/pipeline.ts";
import { demoBook, judgeChanged } from "../support/demo-book.ts";
import { runOn } from "../commands/fakes.ts";

/** Everything a page says, as one text. */
const wordsOf = (value: unknown): string => JSON.stringify(value);

test("a rejected film without repair is rejected in the terminal, on both pages, in the findings and on the front page", async () => {
  const { judged } = judgeChanged(demoBook, [{ set: "ndt-report:RT-01", at: "/rows/0/result", to: "rejected" }]);
  if (judged === null) throw new Error("the changed book cannot be judged");
  const chain = await traceRecord(judged, "joint", "L1");
  if (chain === undefined) throw new Error("joint L1 has no chain");
  const message = "RT-01, row L1-1: joint L1 is rejected, and no repair is recorded";

  const { exit, out } = await runOn({ judged, chain }, "trace", "joint", "L1", "--book", demoBook);
  expect(exit).toBe(1);
  expect(out).toContain("\nrejected        Tests required and done\n");
  expect(out).toContain(message);
  expect(out).not.toMatch(/ \.{3,} /);
  const json = await runOn({ judged, chain }, "trace", "joint", "L1", "--book", demoBook, "--format", "json");
  expect(json.exit).toBe(1);
  expect(JSON.parse(json.out)).toMatchObject({
    links: expect.arrayContaining([expect.objectContaining({ verdict: "rejected" })]) as unknown,
  });

  const { pages } = await layOut(judged);
  const page = (title: string) => {
    const found = pages.find((one) => one.title === title || one.title.startsWith(`${title},`));
    if (found === undefined) throw new Error(`no page ${title}`);
    return found;
  };
  const joint = pages.find(({ url }) => /^\/?joint\//.test(url) && url.includes("L1"));
  const report = pages.find(({ url }) => /^\/?ndt-report\//.test(url) && url.includes("RT-01"));
  for (const one of [joint, report]) {
    if (one === undefined) throw new Error("a page is missing");
    const words = wordsOf([one.under, one.blocks]);
    expect(words).toContain('"mark":"rejected"');
    expect(words).toContain(message);
    expect(wordsOf(one.under)).not.toContain("all passed");
    expect(wordsOf(one.under)).toMatch(/\d not judged|\d rejected/);
  }
  expect(wordsOf(page("Findings").blocks)).toContain(message);
});

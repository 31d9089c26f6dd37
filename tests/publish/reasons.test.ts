import { expect, test } from "vitest";
import { traceRecord } from "../../src/pipeline.ts";
import type { Text } from "../../src/publish/blocks.ts";
import { runOn } from "../commands/fakes.ts";
import { freshFolder, put } from "./issue/folders.ts";
import { demoBook, interimBook, judgeChanged, judgedOnce, sound } from "../support/demo-book.ts";

const plainText = (text: Text | undefined) =>
  text?.map((part) => (typeof part === "string" ? part : "text" in part ? part.text : "")).join("") ?? "";

function without(...fields: string[]) {
  const { judged } = judgeChanged(
    demoBook,
    fields.map((field) => ({ remove: "joint:L1", at: `/${field}` })),
  );
  if (judged === null) throw new Error("the book cannot be read");
  return judged;
}

const reasonsIn = (chain: Awaited<ReturnType<typeof traceRecord>>) =>
  new Map(chain?.links.flatMap(({ what, because }) => (because === undefined ? [] : [[what, plainText(because)]])));

test("what a link waits for is said once, behind one lead, however many checks wait", async () => {
  const reasons = reasonsIn(await traceRecord(without("thicknesses", "length"), "joint", "L1"));
  expect(reasons.get("Tests required and done")?.split("; ").sort()).toEqual([
    "because of: joint L1 has no length",
    "joint L1 has no thicknesses",
  ]);
});

test("the sound book gives no reasons", async () => {
  expect([...reasonsIn(await traceRecord(sound, "joint", "L1"))]).toEqual([]);
});

test("what is not due says its milestone once", async () => {
  const interim = judgedOnce(interimBook);
  const reasons = [...reasonsIn(await traceRecord(interim, "equipment", "TQ423-01")).values()];
  expect(reasons.length).toBeGreaterThan(0);
  for (const reason of reasons) expect(reason).toMatch(/^due at milestone “[^;]+”$/);
});

test("trace prints the reasons as the page has them: because of is said once", async () => {
  const cwd = await freshFolder();
  await put(cwd, { "records/book.json": "{}" });
  const judged = without("thicknesses");
  const chain = await traceRecord(judged, "joint", "L1");
  if (chain === undefined) throw new Error("joint L1 has no chain");
  const { out } = await runOn({ cwd, judged, chain }, "trace", "joint", "L1");
  const lines = out.split("\n").filter((line) => line.includes("because"));
  expect(new Set(lines)).toEqual(new Set(["                because of: joint L1 has no thicknesses"]));
});

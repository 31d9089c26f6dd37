import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openDesk } from "../../src/foreign/desk.ts";
import { ForeignWorkEnded } from "../../src/foreign/ended.ts";
import { freshFolder } from "../publish/issue/folders.ts";

const listens = 'import { parentPort } from "node:worker_threads"; parentPort.on("message", ';

/** A thread that does with every task what it should not. */
async function desk(does: string, bounds: { readonly seconds: number; readonly megabytes: number }) {
  const file = join(await freshFolder(), "worker.mjs");
  writeFileSync(file, `${listens}${does});`);
  return openDesk(bounds, file);
}

const asked = async (does: string, seconds: number, megabytes: number) => {
  const one = await desk(does, { seconds, megabytes });
  return one.nature("files/slow.pdf", "/nowhere/slow.pdf").catch((error: unknown) => error);
};

test("work that never ends is ended, and names the file", async () => {
  const error = await asked("() => { for (;;); }", 0.2, 64);
  expect(error).toBeInstanceOf(ForeignWorkEnded);
  expect(String(error)).toContain(
    "the work on files/slow.pdf was ended: it took longer than 0.2 s. Nothing was judged or written.",
  );
});

test("work that takes too much memory is ended likewise", async () => {
  const error = await asked("() => { const all = []; for (;;) all.push(new Array(1e5).fill({})); }", 60, 32);
  expect(error).toBeInstanceOf(ForeignWorkEnded);
  expect(String(error)).toContain("files/slow.pdf was ended: it took more memory than is allowed");
}, 60_000);

test("a thread that goes away is said too, and the next task starts another", async () => {
  const one = await desk(
    '({ path }) => { if (path === "a") process.exit(); parentPort.postMessage({ form: "text" }); }',
    {
      seconds: 60,
      megabytes: 64,
    },
  );
  await expect(one.nature("a", "/a")).rejects.toThrow("its thread ended");
  await expect(one.nature("b", "/b")).resolves.toEqual({ form: "text" });
  await one.close();
});

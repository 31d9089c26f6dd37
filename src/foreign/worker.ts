import { Buffer } from "node:buffer";
import { readFileSync } from "node:fs";
import { parentPort } from "node:worker_threads";
import { examine, examineFile } from "./examine.ts";
import type { Answer, Task } from "./desk.ts";

// One thread that reads foreign files and does nothing else, so that it can be ended.
parentPort?.on("message", (task: Task) => {
  void answer(task).then(({ reply, hand }) => parentPort?.postMessage(reply, hand));
});

async function answer(task: Task): Promise<{ readonly reply: Answer; readonly hand: ArrayBuffer[] }> {
  try {
    if (task.type === "nature") return { reply: await examineFile(task.path, task.file), hand: [] };
    if (!("bytes" in task)) {
      // What texts need is loaded when the first is asked for: most are kept from an earlier run.
      const { readText } = await import("./text/read-text.ts");
      return { reply: await readText(readFileSync(task.file)), hand: [] };
    }
    const { path, bytes } = task;
    const examined = await examine(path, Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
    const hand = (examined.copied?.objects ?? []).flatMap(({ bytes: own }) => own?.buffer ?? []);
    return { reply: examined, hand: hand.filter((buffer) => buffer instanceof ArrayBuffer) };
  } catch (error) {
    return { reply: { failed: error instanceof Error ? (error.stack ?? error.message) : String(error) }, hand: [] };
  }
}

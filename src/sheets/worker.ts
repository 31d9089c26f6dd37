import { parentPort } from "node:worker_threads";
import type { Replied } from "../foreign/thread.ts";
import type { ReadOptions, SheetFault } from "./cells.ts";
import type { PackedWorkbook } from "./pack.ts";
import { readBytes } from "./read-bytes.ts";

/** A file to read. */
export interface SheetTask {
  readonly bytes: Uint8Array;
  readonly name: string;
  readonly options: ReadOptions;
}

// One thread that reads foreign sheets and does nothing else, so that it can be ended.
parentPort?.on("message", (task: SheetTask) => {
  void answer(task).then(({ reply, hand }) => parentPort?.postMessage(reply, hand));
});

async function answer({ bytes, name, options }: SheetTask) {
  const hand: ArrayBuffer[] = [];
  let reply: Replied<PackedWorkbook | SheetFault>;
  try {
    reply = await readBytes(bytes, name, options);
    if ("sheets" in reply) hand.push(...reply.sheets.flatMap(({ rows, cells }) => [rows.buffer, cells.buffer]));
  } catch (error) {
    reply = { failed: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
  return { reply, hand };
}

import { workerData, type MessagePort } from "node:worker_threads";
import type { OriginalNature } from "../model/original.ts";
import { openDesk, usualBounds } from "./desk.ts";
import { ForeignWorkEnded } from "./ended.ts";

/** What the waiting side hands over, and what it gets back. */
export interface WaiterData {
  readonly files: readonly { readonly path: string; readonly file: string }[];
  readonly done: Int32Array;
  readonly port: MessagePort;
}

export type Waited =
  | { readonly natures: readonly OriginalNature[] }
  | { readonly ended: { readonly path: string; readonly why: string } }
  | { readonly failed: string };

// Looks at files on behalf of a thread that waits without an event loop of its own, which could end nothing.
const { files, done, port } = workerData as WaiterData;
const desk = openDesk(usualBounds);
let waited: Waited;
let at = "";
try {
  const natures: OriginalNature[] = [];
  for (const { path, file } of files) {
    at = path;
    natures.push(await desk.nature(path, file));
  }
  waited = { natures };
} catch (error) {
  waited =
    error instanceof ForeignWorkEnded
      ? { ended: { path: at, why: error.why } }
      : { failed: error instanceof Error ? (error.stack ?? error.message) : String(error) };
}
port.postMessage(waited);
Atomics.store(done, 0, 1);
Atomics.notify(done, 0);
await desk.close();

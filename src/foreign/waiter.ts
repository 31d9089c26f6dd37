import { workerData, type MessagePort } from "node:worker_threads";
import type { OriginalNature } from "../model/original.ts";
import type { OriginalText } from "../model/page-text.ts";
import { openDesk, usualBounds } from "./desk.ts";
import { ForeignWorkEnded } from "./ended.ts";

/** What is wanted of files, and what comes of it. */
export interface Works {
  readonly nature: OriginalNature;
  readonly text: OriginalText;
}

/** What the waiting side hands over, and what it gets back. */
export interface WaiterData {
  readonly work: keyof Works;
  readonly files: readonly { readonly path: string; readonly file: string }[];
  /** First whether all is done, second how many files are. */
  readonly done: Int32Array;
  readonly port: MessagePort;
}

export type Waited =
  | { readonly results: readonly Works[keyof Works][] }
  | { readonly ended: { readonly path: string; readonly why: string } }
  | { readonly failed: string };

// Looks at files on behalf of a thread that waits without an event loop of its own, which could end nothing.
const { work, files, done, port } = workerData as WaiterData;
const desk = openDesk(usualBounds);
let waited: Waited;
let at = "";
try {
  const results: Works[keyof Works][] = [];
  for (const { path, file } of files) {
    at = path;
    results.push(await desk[work](path, file));
    Atomics.add(done, 1, 1);
  }
  waited = { results };
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

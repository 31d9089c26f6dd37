import { parentPort, type MessagePort } from "node:worker_threads";
import type { OriginalNature } from "../model/original.ts";
import type { OriginalText } from "../model/page-text.ts";
import { openDesk, usualBounds } from "./desk.ts";
import { ForeignWorkEnded } from "./ended.ts";

/** What is wanted of files, and what comes of it. */
export interface Works {
  readonly nature: OriginalNature;
  readonly text: OriginalText;
}

/** What the waiting side hands over, and where it gets its answer. */
export interface Job {
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

/** After so long without a job (ms) the thread that reads files gives its memory back. */
const idle = 1000;

// Looks at files on behalf of a thread that waits without an event loop of its own, which could end nothing: one job after
// the other. The thread that reads them comes to life while the other side finds out which files there are.
const desk = openDesk(usualBounds);
desk.start();
let last = Promise.resolve();
let rest: NodeJS.Timeout | undefined;

parentPort?.on("message", (job: Job) => {
  clearTimeout(rest);
  last = last.then(async () => {
    await answer(job);
    clearTimeout(rest);
    rest = setTimeout(() => void desk.close(), idle);
  });
});

async function answer({ work, files, done, port }: Job): Promise<void> {
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
}

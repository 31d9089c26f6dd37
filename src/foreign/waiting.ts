import { MessageChannel, receiveMessageOnPort, type Worker } from "node:worker_threads";
import type { Told } from "../model/page-text.ts";
import { ProgramError } from "../model/program-error.ts";
import { usualBounds, waiterFile, workerFile } from "./desk.ts";
import { ForeignWorkEnded } from "./ended.ts";
import type { Job, Waited, Works } from "./waiter.ts";
import { needFile, workerThread } from "./worker-thread.ts";

/** An original on disk. */
export interface OriginalFile {
  readonly path: string;
  /** Where it lies. */
  readonly file: string;
  readonly sha256: string;
}

/** Between two words to the reader. */
const pause = 200;

let waiter: Worker | undefined;

/**
 * Starts the threads that look at originals, before it is known at which: they come to life while the program loads and
 * reads. Whoever hands them files need not have called it.
 */
export function startThreads(): void {
  standingWaiter();
}

function standingWaiter(): Worker {
  if (waiter !== undefined) return waiter;
  // It starts the other itself, where nobody would hear that it is not there.
  needFile(workerFile);
  // Flags of the program that asks (--input-type, say) are not for a thread that runs a file.
  const own = workerThread(waiterFile, { execArgv: [] });
  own.unref();
  own.once("exit", () => dismiss(own));
  return (waiter = own);
}

function dismiss(one: Worker): void {
  if (waiter === one) waiter = undefined;
  void one.terminate();
}

/**
 * Begins some work on files in threads of their own; what is given back waits for it. Throws ForeignWorkEnded when a thread
 * had to be ended.
 */
export function startWaiter<Work extends keyof Works>(
  work: Work,
  files: readonly OriginalFile[],
): (told?: Told) => readonly Works[Work][] {
  const done = new Int32Array(new SharedArrayBuffer(8));
  const { port1, port2 } = new MessageChannel();
  const job: Job = { work, files: files.map(({ path, file }) => ({ path, file })), done, port: port2 };
  const thread = standingWaiter();
  thread.postMessage(job, [port2]);
  port1.unref();
  return (told) => {
    // The waiter ends what takes too long; this only ends the waiting should it be lost itself.
    const longest = (files.length + 1) * usualBounds.seconds * 1000;
    for (let waiting = 0; waiting < longest && Atomics.wait(done, 0, 0, pause) === "timed-out"; waiting += pause)
      told?.(Atomics.load(done, 1), files.length);
    const waited = receiveMessageOnPort(port1)?.message as Waited | undefined;
    port1.close();
    if (waited === undefined) {
      dismiss(thread);
      throw new ProgramError("the thread that looks at originals did not answer");
    }
    if ("ended" in waited) throw new ForeignWorkEnded(waited.ended.path, waited.ended.why);
    if ("failed" in waited) throw new ProgramError(`reading the originals failed: ${waited.failed}`);
    return waited.results as readonly Works[Work][];
  };
}

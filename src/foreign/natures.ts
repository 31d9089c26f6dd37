import { MessageChannel, receiveMessageOnPort, Worker } from "node:worker_threads";
import type { OriginalNature } from "../model/original.ts";
import { ProgramError } from "../model/program-error.ts";
import { usualBounds, waiterFile } from "./desk.ts";
import { ForeignWorkEnded } from "./ended.ts";
import type { Waited, WaiterData } from "./waiter.ts";

/** An original on disk. */
export interface OriginalFile {
  readonly path: string;
  /** Where it lies. */
  readonly file: string;
  readonly sha256: string;
}

/** The nature of a file follows from its bytes and the end of its name: what was found once in a run stands. */
const known = new Map<string, OriginalNature>();
const keyOf = ({ path, sha256 }: OriginalFile) => `${sha256} ${/\.[^./]*$/.exec(path)?.[0].toLowerCase() ?? ""}`;

/**
 * Begins to look at originals in threads of their own; the answer waits for them. Throws ForeignWorkEnded when a thread
 * had to be ended.
 */
export function startNatures(originals: readonly OriginalFile[]): () => ReadonlyMap<string, OriginalNature> {
  const fresh = [
    ...new Map(originals.filter((one) => !known.has(keyOf(one))).map((one) => [keyOf(one), one])).values(),
  ];
  const wait = fresh.length === 0 ? undefined : startWaiter(fresh);
  return () => {
    wait?.().forEach((nature, index) => {
      const one = fresh[index];
      if (one !== undefined) known.set(keyOf(one), nature);
    });
    return new Map(
      originals.flatMap((one) => {
        const nature = known.get(keyOf(one));
        return nature === undefined ? [] : [[one.path, nature]];
      }),
    );
  };
}

function startWaiter(files: readonly OriginalFile[]): () => readonly OriginalNature[] {
  const done = new Int32Array(new SharedArrayBuffer(4));
  const { port1, port2 } = new MessageChannel();
  const data: WaiterData = { files: files.map(({ path, file }) => ({ path, file })), done, port: port2 };
  // Flags of the program that asks (--input-type, say) are not for a thread that runs a file.
  const waiter = new Worker(waiterFile, { workerData: data, transferList: [port2], execArgv: [] });
  waiter.unref();
  port1.unref();
  return () => {
    // The waiter ends what takes too long; this only ends the waiting should it be lost itself.
    Atomics.wait(done, 0, 0, (files.length + 1) * usualBounds.seconds * 1000);
    const waited = receiveMessageOnPort(port1)?.message as Waited | undefined;
    port1.close();
    void waiter.terminate();
    if (waited === undefined) throw new ProgramError("the thread that looks at originals did not answer");
    if ("ended" in waited) throw new ForeignWorkEnded(waited.ended.path, waited.ended.why);
    if ("failed" in waited) throw new ProgramError(`reading the originals failed: ${waited.failed}`);
    return waited.natures;
  };
}

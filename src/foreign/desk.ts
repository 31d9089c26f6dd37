import { join } from "node:path";
import { Worker } from "node:worker_threads";
import type { OriginalNature } from "../model/original.ts";
import { ProgramError } from "../model/program-error.ts";
import { packageRoot } from "../root.ts";
import { ForeignWorkEnded } from "./ended.ts";
import type { Examined } from "./examine.ts";

/** A file to look at: by its place, when only its nature is wanted; by its bytes, when its pages are. */
export type Task =
  | { readonly type: "nature"; readonly path: string; readonly file: string }
  | { readonly type: "copy"; readonly path: string; readonly bytes: Uint8Array };

/** What became of a task; a fault of this program comes back as text. */
export type Answer = OriginalNature | Examined | { readonly failed: string };

/** What the thread may use. The counts of `Limits` strike long before; these only end what should not have happened. */
export interface Bounds {
  readonly seconds: number;
  readonly megabytes: number;
}

export const usualBounds: Bounds = { seconds: 300, megabytes: 1536 };

/** Threads run compiled code, whether the program itself does or is run from its sources by a test. */
const compiled = (name: string) => join(packageRoot, "dist/src/foreign", name);

/** Where the thread that reads foreign files begins. */
export const workerFile: string = compiled("worker.js");
export const waiterFile: string = compiled("waiter.js");

/** A thread that looks at foreign files, one after the other. */
export interface Desk {
  /** Throws ForeignWorkEnded when the thread had to be ended. */
  nature(path: string, file: string): Promise<OriginalNature>;
  copy(path: string, bytes: Uint8Array): Promise<Examined>;
  close(): Promise<void>;
}

/** Opens a desk; its thread starts with the first task, and anew after one that had to be ended. */
export function openDesk(bounds: Bounds = usualBounds, file: string = workerFile): Desk {
  let worker: Worker | undefined;
  const start = () =>
    new Worker(file, {
      execArgv: [],
      resourceLimits: { maxOldGenerationSizeMb: bounds.megabytes, maxYoungGenerationSizeMb: 64, stackSizeMb: 4 },
    });
  const ask = async <Result extends Answer>(task: Task): Promise<Result> => {
    worker ??= start();
    const answer = await answered(worker, task, bounds).catch(async (error: unknown) => {
      await close();
      throw error;
    });
    if ("failed" in answer) throw new ProgramError(`reading ${task.path} failed: ${answer.failed}`);
    return answer as Result;
  };
  const close = async () => {
    const closing = worker;
    worker = undefined;
    await closing?.terminate();
  };
  return {
    nature: (path, at) => ask({ type: "nature", path, file: at }),
    copy: (path, bytes) => ask({ type: "copy", path, bytes }),
    close,
  };
}

function answered(worker: Worker, task: Task, { seconds }: Bounds): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const finish = (settle: () => void) => {
      clearTimeout(timer);
      worker.off("message", onMessage).off("error", onError).off("exit", onExit);
      settle();
    };
    const onMessage = (answer: Answer) => finish(() => resolve(answer));
    const onError = () => finish(() => reject(new ForeignWorkEnded(task.path, "it took more memory than is allowed")));
    const onExit = () => finish(() => reject(new ForeignWorkEnded(task.path, "its thread ended")));
    const timer = setTimeout(
      () => finish(() => reject(new ForeignWorkEnded(task.path, `it took longer than ${seconds} s`))),
      seconds * 1000,
    );
    worker.on("message", onMessage).on("error", onError).on("exit", onExit);
    worker.postMessage(task);
  });
}

import type { Worker } from "node:worker_threads";
import { ProgramError } from "../model/program-error.ts";
import { ForeignWorkEnded } from "./ended.ts";
import { workerThread } from "./worker-thread.ts";

/** What a thread may use. Counts of what is read strike long before; these only end what should not have happened. */
export interface Bounds {
  readonly seconds: number;
  readonly megabytes: number;
}

/** What became of a task; a fault of this program comes back as text. */
export type Replied<Answer> = Answer | { readonly failed: string };

/** A thread that works on foreign files, one after the other. */
export interface Thread<Task, Answer> {
  /** Starts it before there is a task: coming to life takes it longer than a small task. */
  start(): void;
  /** Throws ForeignWorkEnded when the thread had to be ended. `path` names the file in words. */
  ask(path: string, task: Task): Promise<Answer>;
  close(): Promise<void>;
}

/** Opens a thread; it starts with the first task, and anew after one that had to be ended. */
export function openThread<Task, Answer extends object>(file: string, bounds: Bounds): Thread<Task, Answer> {
  let worker: Worker | undefined;
  const start = () => {
    const own = workerThread(file, {
      execArgv: [],
      resourceLimits: { maxOldGenerationSizeMb: bounds.megabytes, maxYoungGenerationSizeMb: 64, stackSizeMb: 4 },
    });
    // One that ends between two tasks harms none: the next starts another. While there is a task, it is said of that.
    own
      .on("error", () => undefined)
      .once("exit", () => {
        if (worker === own) worker = undefined;
      });
    return own;
  };
  const close = async () => {
    const closing = worker;
    worker = undefined;
    await closing?.terminate();
  };
  return {
    start() {
      worker ??= start();
    },
    async ask(path, task) {
      worker ??= start();
      const answer = await answered<Answer>(worker, path, task, bounds).catch(async (error: unknown) => {
        await close();
        throw error;
      });
      if ("failed" in answer) throw new ProgramError(`reading ${path} failed: ${answer.failed}`);
      return answer;
    },
    close,
  };
}

function answered<Answer>(worker: Worker, path: string, task: unknown, bounds: Bounds): Promise<Replied<Answer>> {
  return new Promise((resolve, reject) => {
    const finish = (settle: () => void) => {
      clearTimeout(timer);
      worker.off("message", onMessage).off("error", onError).off("exit", onExit);
      settle();
    };
    const onMessage = (answer: Replied<Answer>) => finish(() => resolve(answer));
    const onError = () => finish(() => reject(new ForeignWorkEnded(path, "it took more memory than is allowed")));
    const onExit = () => finish(() => reject(new ForeignWorkEnded(path, "its thread ended")));
    const timer = setTimeout(
      () => finish(() => reject(new ForeignWorkEnded(path, `it took longer than ${bounds.seconds} s`))),
      bounds.seconds * 1000,
    );
    worker.on("message", onMessage).on("error", onError).on("exit", onExit);
    worker.postMessage(task);
  });
}

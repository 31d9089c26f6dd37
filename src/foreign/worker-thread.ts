import { existsSync } from "node:fs";
import { Worker, type WorkerOptions } from "node:worker_threads";
import { DamagedInstallation } from "../model/damaged.ts";

/** A thread that runs a file of the program. A file that is not there would end the whole program when the thread starts. */
export function workerThread(file: string, options: WorkerOptions): Worker {
  needFile(file);
  return new Worker(file, options);
}

/** Throws DamagedInstallation where a file of the program is not there. */
export function needFile(file: string): void {
  if (!existsSync(file)) throw new DamagedInstallation(file);
}

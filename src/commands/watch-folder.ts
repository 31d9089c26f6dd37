import { existsSync } from "node:fs";
import { sep } from "node:path";
import chokidar, { type FSWatcher } from "chokidar";
import { hasCode } from "../publish/issue/folder.ts";
import { UsageError } from "./command.ts";

export interface WatchedFolder {
  /** From here on no change is missed. */
  readonly ready: Promise<void>;
  /** Watches further folders too, from now on. */
  also(dirs: readonly string[]): void;
  /** Calls `changed` as after a change. */
  now(): Promise<void>;
  /** Rejects when the system refuses to watch. */
  readonly failed: Promise<never>;
  close(): Promise<void>;
}

/** Signs of one save come as several; a file is read when its size has stood still that long. */
const still = 120;
/** How often a folder that went away is looked for. */
const lookAgain = 1000;

/**
 * Calls `changed` after each change below a folder, never twice at once: what comes meanwhile is one call more. A folder
 * that goes away is waited for.
 */
export function watchFolder(dir: string, changed: (gone: boolean) => Promise<void>): WatchedFolder {
  const roots = new Set([dir]);
  let watcher: FSWatcher;
  let timer: NodeJS.Timeout | undefined;
  let running = false;
  // Calls wanted and calls made; what is wanted during a call counts once.
  let wanted = 0;
  let made = 0;
  let lost = false;
  let closed = false;
  let refuse: (reason: unknown) => void = () => undefined;
  const failed = new Promise<never>((_, reject) => (refuse = reject));
  failed.catch(() => undefined);

  const soon = () => {
    if (closed) return;
    clearTimeout(timer);
    timer = setTimeout(() => void run(), still);
  };
  const run = async () => {
    wanted++;
    if (running) return;
    running = true;
    while (made !== wanted && !closed) {
      made = wanted;
      const gone = !existsSync(dir);
      await changed(gone).catch(refuse);
      if (gone || lost) await watchAgain();
    }
    running = false;
  };
  const watchAgain = async () => {
    while (!existsSync(dir) && !closed) await new Promise((resolve) => setTimeout(resolve, lookAgain));
    if (closed) return;
    // The old watch is on what was removed, not on what has its name now.
    await watcher.close();
    lost = false;
    await start();
    wanted++;
  };
  const start = async () => {
    watcher = chokidar.watch([...roots], {
      ignoreInitial: true,
      ignored: (path) =>
        [...roots].some((root) => path.startsWith(root + sep) && isPassedOver(path.slice(root.length + 1))),
      awaitWriteFinish: { stabilityThreshold: still, pollInterval: 40 },
      followSymlinks: false,
    });
    watcher.on("all", (event, path) => {
      lost ||= event === "unlinkDir" && roots.has(path);
      soon();
    });
    watcher.on("error", (error) => {
      refuse(
        hasCode(error, "ENOSPC", "EMFILE")
          ? new UsageError(
              "the system allows no more folders to be watched; close other programs that watch, or raise its limit",
            )
          : error,
      );
    });
    await new Promise<void>((resolve) => watcher.once("ready", resolve));
  };
  return {
    ready: start(),
    also(dirs) {
      for (const one of dirs.filter((each) => !roots.has(each))) {
        roots.add(one);
        watcher.add(one);
      }
    },
    now: run,
    failed,
    async close() {
      closed = true;
      clearTimeout(timer);
      await watcher.close();
    },
  };
}

/** What reading passes over too: see the listing of a book. */
function isPassedOver(path: string): boolean {
  const steps = path.split(sep);
  return steps.some((step) => step.startsWith(".") || step === "node_modules") || steps[0] === "out";
}

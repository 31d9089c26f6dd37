import type { OriginalNature } from "../model/original.ts";
import type { OriginalText } from "../model/page-text.ts";
import type { Examined } from "./examine.ts";
import { threadFile } from "../root.ts";
import { openThread, type Bounds, type Replied } from "./thread.ts";

/** A file to look at: by its place, when its nature or its text is wanted; by its bytes, when its pages are. */
export type Task =
  | { readonly type: "nature" | "text"; readonly path: string; readonly file: string }
  | { readonly type: "copy"; readonly path: string; readonly bytes: Uint8Array };

export type Answer = Replied<OriginalNature | OriginalText | Examined>;

export const usualBounds: Bounds = { seconds: 300, megabytes: 1536 };

/** Where the thread that reads foreign files begins. */
export const workerFile: string = threadFile("foreign/worker.js");
export const waiterFile: string = threadFile("foreign/waiter.js");

/** A thread that looks at foreign files, one after the other. */
export interface Desk {
  /** Starts its thread before there is a task. */
  start(): void;
  /** Throws ForeignWorkEnded when the thread had to be ended. */
  nature(path: string, file: string): Promise<OriginalNature>;
  text(path: string, file: string): Promise<OriginalText>;
  copy(path: string, bytes: Uint8Array): Promise<Examined>;
  close(): Promise<void>;
}

/** Opens a desk; its thread starts with the first task, and anew after one that had to be ended. */
export function openDesk(bounds: Bounds = usualBounds, file: string = workerFile): Desk {
  const thread = openThread<Task, OriginalNature | OriginalText | Examined>(file, bounds);
  return {
    start: () => thread.start(),
    nature: (path, at) => thread.ask(path, { type: "nature", path, file: at }) as Promise<OriginalNature>,
    text: (path, at) => thread.ask(path, { type: "text", path, file: at }) as Promise<OriginalText>,
    copy: (path, bytes) => thread.ask(path, { type: "copy", path, bytes }) as Promise<Examined>,
    close: () => thread.close(),
  };
}

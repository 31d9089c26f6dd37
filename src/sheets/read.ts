import { ForeignWorkEnded } from "../foreign/ended.ts";
import { openThread, type Bounds } from "../foreign/thread.ts";
import { threadFile } from "../root.ts";
import type { ReadOptions, SheetFault, Workbook } from "./cells.ts";
import { unpack, type PackedWorkbook } from "./pack.ts";
import type { SheetTask } from "./worker.ts";

const usualBounds: Bounds = { seconds: 120, megabytes: 1024 };

/**
 * Reads a workbook (.xlsx) or a CSV file in a thread of its own, which is ended when it takes too long. `name` is that of
 * the file, with its ending. What is wrong with the file, whatever it holds, is in the answer, never thrown.
 */
export async function readSheetFile(
  bytes: Uint8Array,
  name: string,
  options: ReadOptions = {},
  bounds: Bounds = usualBounds,
): Promise<Workbook | SheetFault> {
  const thread = openThread<SheetTask, PackedWorkbook | SheetFault>(threadFile("sheets/worker.js"), bounds);
  try {
    const answer = await thread.ask(name, { bytes, name, options });
    return "sheets" in answer ? unpack(answer) : answer;
  } catch (error) {
    if (!(error instanceof ForeignWorkEnded)) throw error;
    return {
      message: "the work on the file was ended",
      why: error.why,
      hint: "save the sheet that is wanted alone, without pictures and formats, and import that",
    };
  } finally {
    await thread.close();
  }
}

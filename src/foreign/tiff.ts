import type { Buffer } from "node:buffer";
import type { Budget } from "./budget.ts";
import { damaged } from "./refused.ts";

/** Pages of a TIFF: it is a chain of directories, one for each page (TIFF revision 6.0, section 2). */
export function tiffPages(file: Buffer, budget: Budget): number {
  const little = file[0] === 0x49;
  const word = (at: number) => (little ? file.readUInt16LE(at) : file.readUInt16BE(at));
  const long = (at: number) => (little ? file.readUInt32LE(at) : file.readUInt32BE(at));
  const seen = new Set<number>();
  for (let at = file.length < 8 ? 0 : long(4); at !== 0;) {
    const end = at + 2 <= file.length ? at + 2 + 12 * word(at) : Infinity;
    if (seen.has(at) || end + 4 > file.length) throw damaged("its list of pages is not whole");
    seen.add(at);
    budget.spend("pages");
    at = long(end);
  }
  if (seen.size === 0) throw damaged("it has no page");
  return seen.size;
}

import { createHash } from "node:crypto";
import { closeSync, openSync, readSync } from "node:fs";

const block = 1024 * 1024;

// One for all files: a new one for each makes the engine collect after every few.
let bytes: Buffer | undefined;

/** SHA-256 and size of a file, read block by block. Throws when it cannot be read. */
export function hashFile(path: string): { readonly sha256: string; readonly size: number } {
  const hash = createHash("sha256");
  bytes ??= Buffer.allocUnsafe(block);
  const file = openSync(path, "r");
  try {
    let size = 0;
    for (let got = readSync(file, bytes); got > 0; got = readSync(file, bytes)) {
      hash.update(bytes.subarray(0, got));
      size += got;
    }
    return { sha256: hash.digest("hex"), size };
  } finally {
    closeSync(file);
  }
}

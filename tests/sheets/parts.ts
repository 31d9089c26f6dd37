import { Buffer } from "node:buffer";
import { unzipSync } from "fflate";

/** The text of a part of an archive that we wrote. */
export function partOf(bytes: Uint8Array, name: string): string {
  const part = unzipSync(bytes)[name];
  return part === undefined ? "" : Buffer.from(part).toString("utf8");
}

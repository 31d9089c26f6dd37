import type { Buffer } from "node:buffer";

/** Names of the parts of a ZIP archive by its central directory; undefined when it has none that can be read whole. */
export interface Archive {
  readonly names: readonly string[];
  readonly locked: boolean;
}

/** Parts of one archive, at most. A workbook has some dozens. */
const mostParts = 20_000;

/** Reads the list of parts at the end of an archive (APPNOTE 6.3, 4.3.12 and 4.3.16). Nothing is unpacked. */
export function archiveOf(file: Buffer): Archive | undefined {
  const end = file.lastIndexOf("PK\u0005\u0006", undefined, "latin1");
  if (end < 0 || end + 22 > file.length || end < file.length - 65_557) return undefined;
  const count = file.readUInt16LE(end + 10);
  let at = file.readUInt32LE(end + 16);
  if (count > mostParts) return undefined;
  const names: string[] = [];
  let locked = false;
  for (let index = 0; index < count; index++) {
    if (at + 46 > end || file.readUInt32LE(at) !== 0x02014b50) return undefined;
    const [name, extra, remark] = [28, 30, 32].map((offset) => file.readUInt16LE(at + offset));
    const next = at + 46 + (name ?? 0) + (extra ?? 0) + (remark ?? 0);
    if (next > end) return undefined;
    if ((file.readUInt16LE(at + 8) & 1) !== 0) locked = true;
    names.push(file.toString("utf8", at + 46, at + 46 + (name ?? 0)));
    at = next;
  }
  return { names, locked };
}

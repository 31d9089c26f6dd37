import { join } from "node:path";
import type { Finding } from "../model/finding.ts";
import { sha256 } from "../model/fingerprint.ts";
import type { Kind } from "../model/kind.ts";
import type { BookFile, BookRecord } from "../model/record.ts";
import { findingOf } from "./file-rules.ts";
import { hashRemembered, type ReadingMemory } from "./memory.ts";
import { quoted } from "./portable.ts";
import { decode, readBytes, refusal, type FileFault } from "./read-file.ts";
import { readRecords } from "./record-file.ts";

/** What a file of records holds as text, and whether it is sound JSON. */
export interface KeptText {
  readonly bytes: Buffer;
  readonly sound: boolean;
}

/** What the record files of one folder hold. Places are printed below `below`. */
export interface FolderRecords {
  readonly files: readonly BookFile[];
  readonly records: readonly BookRecord[];
  readonly findings: readonly Finding[];
  readonly unreadable: readonly string[];
  readonly kept: ReadonlyMap<string, KeptText>;
}

/** Reads record files of a folder one by one: what is wrong with one leaves the others read. */
export function readFolder(
  dir: string,
  paths: readonly string[],
  kinds: ReadonlyMap<string, Kind>,
  {
    most,
    below = "",
    memory,
  }: { readonly most: number; readonly below?: string; readonly memory?: ReadingMemory | undefined },
): FolderRecords {
  const files: BookFile[] = [];
  const records: BookRecord[] = [];
  const findings: Finding[] = [];
  const unreadable: string[] = [];
  const kept = new Map<string, KeptText>();
  for (const inner of paths) {
    const path = below + inner;
    const refuse = (fault: FileFault) => {
      findings.push(notReadable(path, fault));
      unreadable.push(path);
    };
    const bytes = readBytes(join(dir, inner), most);
    if (!Buffer.isBuffer(bytes)) {
      refuse(bytes);
      continue;
    }
    const known = memory?.records.get(path);
    const before = known?.bytes.equals(bytes) === true ? known : undefined;
    const hash = before?.sha256 ?? sha256(bytes);
    files.push({ path, size: bytes.length, sha256: hash, role: "record" });
    const text = before === undefined ? decode(bytes) : "";
    if (typeof text !== "string") {
      refuse(text);
      continue;
    }
    const read = before?.file ?? readRecords(path, text, kinds);
    memory?.records.set(path, { bytes, sha256: hash, file: read });
    kept.set(path, { bytes, sound: read.sound });
    records.push(...read.records);
    findings.push(...read.findings);
    if (!read.whole) unreadable.push(path);
  }
  return { files, records, findings, unreadable, kept };
}

/** An original as it lies on disk: `lies` is its path from `dir`, `path` the one that is printed. */
export interface LyingOriginal {
  readonly path: string;
  readonly lies: string;
}

/** Hashes of originals, and a finding for each that cannot be read. */
export function hashOriginals(
  dir: string,
  originals: readonly LyingOriginal[],
  memory?: ReadingMemory,
): Pick<FolderRecords, "files" | "findings"> {
  const files: BookFile[] = [];
  const findings: Finding[] = [];
  for (const { path, lies } of originals) {
    try {
      files.push({
        path,
        ...(lies !== path && { lies }),
        ...hashRemembered(memory, join(dir, lies)),
        role: "original",
      });
    } catch (error) {
      findings.push(
        notReadable(path, {
          message: `the original ${quoted(path)} cannot be read: ${refusal(error)}`,
          why: "without its bytes there is no hash to compare",
          hint: "restore the file, or give the account that runs this the right to read it",
        }),
      );
    }
  }
  return { files, findings };
}

function notReadable(file: string, { message, why, hint, position }: FileFault): Finding {
  return findingOf({
    rule: "file-readable",
    place: { file, pointer: "", ...(position !== undefined && { position }) },
    message,
    why,
    hint,
  });
}

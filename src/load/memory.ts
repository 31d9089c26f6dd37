import { statSync } from "node:fs";
import { hashFile } from "./hash-file.ts";
import type { RecordFile } from "./record-file.ts";

interface ReadFile {
  readonly bytes: Buffer;
  readonly sha256: string;
  readonly file: RecordFile;
}

/**
 * What was read of a folder before, so that reading it again looks only into files that have changed: record files by
 * their bytes, originals by what the system says of a file that was written to.
 */
export interface ReadingMemory {
  readonly records: Map<string, ReadFile>;
  readonly originals: Map<string, HashedFile>;
}

interface HashedFile {
  /** What the system says of a file that changes when it is written to, as far as its clock ticks. */
  readonly state: string;
  readonly hash: ReturnType<typeof hashFile>;
  /** It was hashed twice in that state: a write in the moment of the first time would have shown. */
  readonly settled: boolean;
}

export const newReadingMemory = (): ReadingMemory => ({ records: new Map(), originals: new Map() });

/** As `hashFile`; the hash it had, where the file is the one that was hashed and nobody has written to it since. */
export function hashRemembered(memory: ReadingMemory | undefined, path: string): ReturnType<typeof hashFile> {
  if (memory === undefined) return hashFile(path);
  const { dev, ino, size, mtimeNs, ctimeNs } = statSync(path, { bigint: true });
  const state = [dev, ino, size, mtimeNs, ctimeNs].join(" ");
  const before = memory.originals.get(path);
  if (before?.state === state && before.settled) return before.hash;
  const hash = hashFile(path);
  memory.originals.set(path, { state, hash, settled: before?.state === state && before.hash.sha256 === hash.sha256 });
  return hash;
}

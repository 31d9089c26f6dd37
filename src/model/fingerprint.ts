import { createHash } from "node:crypto";
import { byCodePoint } from "./order.ts";

/** A file and the SHA-256 of its bytes, in lower-case hex. */
export interface Hashed {
  readonly path: string;
  readonly sha256: string;
}

/**
 * Fingerprint of the evidence, SHA-256 in hex: taken over one line `sha256  path` (and a line feed) for each record file
 * and original, paths as in the book, sorted by code point, without `issue.json` and `signing/`, which change from issue
 * to issue. Any program that hashes files gives the same.
 */
export function evidenceFingerprint(files: Iterable<Hashed>): string {
  return sha256(hashLines([...files].filter(({ path }) => path !== "issue.json" && !path.startsWith("signing/"))));
}

/** Lines as `sha256sum` prints and checks them, sorted by path in code-point order. */
export function hashLines(files: readonly Hashed[]): string {
  return [...files]
    .sort((a, b) => byCodePoint(a.path, b.path))
    .map(({ path, sha256: hash }) => `${hash}  ${path}\n`)
    .join("");
}

/** SHA-256 of bytes or of a text in UTF-8, in lower-case hex. */
export function sha256(content: Uint8Array | string): string {
  return createHash("sha256").update(content).digest("hex");
}

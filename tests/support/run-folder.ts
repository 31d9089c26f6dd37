import { mkdtempSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";

const prefix = "databook-tests-";

/**
 * All temporary folders of a run of tests stand in one, which goes when the run ends: files that share a process share
 * copies. Vitest asks once for each project.
 */
export default function runFolder(): () => void {
  if (basename(tmpdir()).startsWith(prefix)) return () => undefined;
  const folder = realpathSync(mkdtempSync(join(tmpdir(), prefix)));
  process.env["TMPDIR"] = folder;
  return () => rmSync(folder, { recursive: true, force: true });
}

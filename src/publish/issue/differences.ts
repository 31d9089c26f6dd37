import { join } from "node:path";
import { hashFile, listFolder, standingAt } from "./folder.ts";
import type { Hashes } from "./hash-list.ts";

/** In what a folder differs from an issue with these hashes, in words by file; empty when every byte is the same. */
export async function differences(hashes: Hashes, dir: string): Promise<readonly string[]> {
  if ((await standingAt(dir)) !== "folder") return [`"${dir}" is no folder`];
  const { files, others, empty } = await listFolder(dir);
  const there = new Set(files);
  const different: string[] = [];
  for (const [path, sha256] of hashes)
    if (!there.has(path)) different.push(`${path} is missing`);
    else if ((await hashFile(join(dir, path))) !== sha256) different.push(`${path} differs`);
  for (const path of files) if (!hashes.has(path)) different.push(`${path} is extra`);
  return [
    ...different,
    ...others.map((path) => `${path} is no plain file`),
    ...empty.map((path) => `${path} is an extra folder`),
  ];
}

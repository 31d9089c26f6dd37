/** So many files gone from one folder, and none left of it, are one loss and not many. */
const several = 3;

/**
 * Folders of which everything that is named is gone, by the path of each file in them: of a lost folder in a lost folder
 * the outer one. Files gone from folders that still hold others are lost one by one, and in none of these.
 */
export function lostFolders(
  named: readonly string[],
  isThere: (path: string) => boolean,
): ReadonlyMap<string, LostFolder> {
  const gone = named.filter((path) => !isThere(path));
  const there = named.filter(isThere);
  const counts = new Map<string, number>();
  const folderOf = new Map(
    gone.flatMap((path) => {
      const folder = foldersOf(path).find((one) => !there.some((other) => other.startsWith(`${one}/`)));
      if (folder === undefined) return [];
      counts.set(folder, (counts.get(folder) ?? 0) + 1);
      return [[path, folder] as const];
    }),
  );
  return new Map(
    [...folderOf].flatMap(([path, folder]) => {
      const files = counts.get(folder) ?? 0;
      return files < several ? [] : [[path, { folder, files }] as const];
    }),
  );
}

/** A folder that is gone, and how many named files with it. */
export interface LostFolder {
  readonly folder: string;
  readonly files: number;
}

/** Folders a path lies in, the outermost first. */
function foldersOf(path: string): readonly string[] {
  const steps = path.split("/").slice(0, -1);
  return steps.map((_, index) => steps.slice(0, index + 1).join("/"));
}

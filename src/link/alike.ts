const lookAlike: Readonly<Record<string, string>> = { I: "1", L: "1", S: "5", B: "8", G: "6", Z: "2" };

/**
 * Folds what people and scanners confuse: case, hyphens and dots, leading zeros of numbers, look-alike signs. Two ids
 * with one folded form are suspected to be one thing written in two ways. A hyphen between digits tells numbers apart
 * (row 1-12, row 11-2) and stays.
 */
export function foldAlike(id: string): string {
  return id
    .toUpperCase()
    .replaceAll(/[OQ]/g, "0")
    .replaceAll(/(?<![0-9])[^A-Z0-9]+|[^A-Z0-9]+(?![0-9])/g, "")
    .replaceAll(/[^A-Z0-9]+/g, "-")
    .replaceAll(/(?<![0-9])0+(?=[0-9])/g, "")
    .replaceAll(/[ILSBGZ]/g, (sign) => lookAlike[sign] ?? sign);
}

/** Number of single-sign edits between two ids, a swap of neighbours counting one. */
export function editDistance(a: string, b: string): number {
  const width = b.length + 1;
  const table = new Uint16Array((a.length + 1) * width);
  const at = (i: number, j: number) => table[i * width + j] ?? 0;
  for (let i = 0; i <= a.length; i++) table[i * width] = i;
  for (let j = 0; j <= b.length; j++) table[j] = j;
  for (let i = 1; i <= a.length; i++)
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, at(i - 2, j - 2) + 1);
      table[i * width + j] = best;
    }
  return at(a.length, b.length);
}

/** The ids nearest to a wanted one, for a hint: at most three, at most a third of its signs away. */
export function nearestIds(wanted: string, ids: Iterable<string>): readonly string[] {
  const limit = Math.max(1, Math.floor(wanted.length / 3));
  return [...ids]
    .filter((id) => Math.abs(id.length - wanted.length) <= limit)
    .map((id) => ({ id, distance: editDistance(wanted, id) }))
    .filter(({ distance }) => distance <= limit)
    .sort((a, b) => a.distance - b.distance || (a.id < b.id ? -1 : 1))
    .slice(0, 3)
    .map(({ id }) => id);
}

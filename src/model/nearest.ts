const lookAlike: Readonly<Record<string, string>> = { "0": "o", "1": "l", i: "l", "5": "s", "8": "b", "2": "z" };

const fold = (name: string) =>
  name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]/g, "")
    .replaceAll(/[0-258i]/g, (sign) => lookAlike[sign] ?? sign);

/** The known name nearest to one that is not known, or undefined when none is near: case and look-alike signs count nothing. */
export function nearestName(wanted: string, known: Iterable<string>): string | undefined {
  if (wanted.length > 60) return undefined;
  const folded = fold(wanted);
  let limit = Math.max(1, Math.floor(folded.length / 3)) + 1;
  let best: string | undefined;
  for (const name of known) {
    const distance = editDistance(folded, fold(name), limit);
    if (distance < limit) {
      limit = distance;
      best = name;
    }
  }
  return best;
}

/** Single-sign edits between two texts, a swap of neighbours counting one; `limit` when there are at least that many. */
function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) >= limit) return limit;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(
        Math.min(
          (last[j] ?? 0) + 1,
          (row[j - 1] ?? 0) + 1,
          (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1),
          swapped ? (before[j - 2] ?? 0) + 1 : limit,
        ),
      );
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? limit;
}

/** What to say after a name that is not known, if one is near. `spelled` is how that one is then written. */
export function nearestWords(
  wanted: string,
  known: Iterable<string>,
  spelled: (name: string) => string = (name) => name,
): string {
  const near = nearestName(wanted, known);
  return near === undefined ? "" : `; did you mean "${spelled(near)}"?`;
}

const mostListed = 12;

/** The same; where none is near, what there is. */
export function nearestOrAll(wanted: string, known: Iterable<string>, spelled?: (name: string) => string): string {
  const all = [...known];
  const near = nearestWords(wanted, all, spelled);
  if (near !== "" || all.length === 0) return near;
  const rest = all.length - mostListed;
  return `; there are ${all.slice(0, mostListed).join(", ")}${rest > 0 ? `, and ${rest} more` : ""}`;
}

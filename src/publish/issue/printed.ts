const group = /<li>([0-9a-f]{4})<\/li>/g;

/** The evidence fingerprints that a finished page prints whole, in their sixteen groups. */
export function printedWhole(page: string): readonly string[] {
  return Array.from(page.matchAll(/<figure class="fingerprint">([^]*?)<\/figure>/g), ([, inner = ""]) =>
    Array.from(inner.matchAll(group), ([, sign = ""]) => sign).join(""),
  ).filter((hash) => hash.length === 64);
}

/** The beginning of the evidence fingerprint that every page prints at its foot; undefined for a page that prints none. */
export function printedAtFoot(page: string): string | undefined {
  const foot = page.slice(page.lastIndexOf("<footer"));
  return /<code>((?:[0-9a-f]{4} ){3}[0-9a-f]{4})<\/code>/.exec(foot)?.[1]?.replaceAll(" ", "");
}

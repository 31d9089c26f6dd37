const numbered = /^(?:EN )?(?:ISO )?(\d{4,5})(?:-([A-Z]))?(?::\d{4})?\s*(?:[-–:]\s*)?/;

interface FillerName {
  /** Number of the standard, and its system where one is named: "14341 A". */
  readonly standard: string | undefined;
  readonly symbols: string;
}

function partsOf(name: string): FillerName {
  const plain = name.replaceAll(/\s+/g, " ").trim();
  const head = numbered.exec(plain);
  const symbols = plain.slice(head?.[0].length ?? 0).toUpperCase();
  return { standard: head === null ? undefined : `${head[1] ?? ""} ${head[2] ?? ""}`.trim(), symbols };
}

/**
 * Whether two names are one class of filler: the same symbols, with the number of the standard or without it. Symbols of
 * two standards are never one class by themselves; the batch states its other classifications.
 */
export function sameClass(one: string, other: string): boolean {
  const [a, b] = [partsOf(one), partsOf(other)];
  if (a.symbols !== b.symbols) return false;
  return a.standard === undefined || b.standard === undefined || a.standard === b.standard;
}

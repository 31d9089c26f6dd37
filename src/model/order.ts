// Surrogates stand for code points above every single unit, but lie below U+E000 in UTF-16.
const rank = (unit: number) => (unit >= 0xd800 && unit <= 0xdfff ? unit + 0x10000 : unit);

/** Order of two texts by code point, the same on every machine and in every language; for `sort`. */
export function byCodePoint(a: string, b: string): number {
  const length = Math.min(a.length, b.length);
  for (let i = 0; i < length; i++) {
    const difference = rank(a.charCodeAt(i)) - rank(b.charCodeAt(i));
    if (difference !== 0) return difference;
  }
  return a.length - b.length;
}

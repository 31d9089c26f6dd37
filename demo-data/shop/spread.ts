/**
 * A reading between two values that looks measured and is the same in every build: its place between them follows from
 * the name of what was read.
 */
export function spread(name: string, least: number, most: number): number {
  let mixed = 7;
  for (const sign of name) mixed = (mixed * 31 + (sign.codePointAt(0) ?? 0)) % 9973;
  return least + ((most - least) * (mixed % 101)) / 100;
}

/** The first few of a list, and how many more there are. */
export const firstFew = (list: readonly string[], most = 3): string =>
  list.length <= most + 1 ? list.join("; ") : `${list.slice(0, most).join("; ")}; and ${list.length - most} more`;

/** "weld log", "NDT report": a kind as a word. */
export const kindName = (kind: string): string =>
  kind
    .split("-")
    .map((word) => (word === "ndt" ? "NDT" : word))
    .join(" ");

/** "low-water limiter", "feed pump": a sort of fitting as words. */
export const fittingName = (sort: string): string =>
  kindName(sort)
    .replace(/^(low|high) water/, "$1-water")
    .replace("blow down", "blow-down");

/** "a weld log", "an NDT report", "an instrument": how a kind is named in a title. */
export function aKind(kind: string): string {
  const name = kindName(kind);
  return `${/^([aeio]|NDT)/.test(name) ? "an" : "a"} ${name}`;
}

/** The same at the head of a sentence. */
export const AKind = (kind: string): string => aKind(kind).replace(/^a/, "A");

const longestId = 40;

/** An id made from a file's name, in the alphabet of ids, that no other original bears. */
export function idFor(path: string, taken: ReadonlySet<string>): string {
  const name = path.slice(path.lastIndexOf("/") + 1).replace(/(?<=.)\.[^.]*$/, "");
  const folded = name
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .toUpperCase()
    .replaceAll(/[^A-Z0-9.]+/g, "-")
    .replaceAll(/^[-.]+|[-.]+$/g, "");
  const base = (folded === "" ? "ORIGINAL" : folded).slice(0, longestId).replace(/[-.]+$/, "");
  let id = base;
  for (let n = 2; taken.has(id); n++) {
    const tail = `-${n}`;
    id = base.slice(0, longestId - tail.length).replace(/[-.]+$/, "") + tail;
  }
  return id;
}

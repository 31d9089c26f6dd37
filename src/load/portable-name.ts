import { maxPath, nameFault } from "./portable.ts";

/** Why a path of the book is not the same on every system; undefined when it is. */
export function pathFault(path: string): string | undefined {
  if (path.length > maxPath) return `it has ${path.length} signs; expected at most ${maxPath}`;
  for (const step of path.split("/")) {
    const fault = nameFault(step);
    if (fault !== undefined) return fault.why;
  }
  return undefined;
}

/** A portable path like this one that no other bears, whatever the case; `taken` are folded paths, and gets the new one. */
export function portablePath(path: string, taken: Set<string>): string {
  const steps = path.split("/").map(portableStep);
  const name = steps.pop() ?? "file";
  const room = maxPath - name.length - 8;
  const folder = steps
    .join("/")
    .slice(0, Math.max(5, room))
    .replace(/[/.-]+$/, "");
  const dot = name.lastIndexOf(".");
  const [stem, ending] = dot > 0 ? [name.slice(0, dot), name.slice(dot)] : [name, ""];
  let own = `${folder}/${name}`;
  for (let n = 2; taken.has(own.toLowerCase()); n++) own = `${folder}/${stem}-${n}${ending}`;
  taken.add(own.toLowerCase());
  return own;
}

const longestStep = 100;

function portableStep(step: string): string {
  const dot = step.lastIndexOf(".");
  const ending = dot > 0 ? /^\.[A-Za-z0-9]{1,5}$/.exec(step.slice(dot))?.[0] : undefined;
  const stem = ending === undefined ? step : step.slice(0, dot);
  const plain = stem
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .replaceAll("ß", "ss")
    .replaceAll(/[^A-Za-z0-9._-]+/g, "-")
    .replaceAll(/^[-.]+|[-.]+$/g, "")
    .slice(0, longestStep)
    .replace(/[-.]+$/, "");
  const named = plain === "" ? "file" : plain;
  const whole = `${named}${ending ?? ""}`;
  return nameFault(whole) === undefined ? whole : `file-${whole}`;
}

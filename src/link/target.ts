import type { LinkTarget } from "../model/graph.ts";

const idPattern = /^[A-Z0-9][A-Z0-9.-]{0,39}$/;

/**
 * Reads a link as written against the targets its field allows (`joint`, `material-certificate#rows`,
 * `welding-procedure@revisions`). Returns the target, or a sentence saying what a link here looks like.
 */
export function parseTarget(text: string, targets: readonly string[]): LinkTarget | { readonly expected: string } {
  const several = targets.length > 1;
  const colon = text.indexOf(":");
  const kindText = several ? text.slice(0, Math.max(colon, 0)) : "";
  const rest = several ? text.slice(colon + 1) : text;
  const ofKind = targets.filter((target) => !several || target.split(/[#@]/)[0] === kindText);
  // A kind may be named whole and by rows of several lists: what is written tells which is meant.
  const allowed = ofKind.find((target) => signOf(target) === signOf(rest)) ?? ofKind[0];
  const form = () => [...new Set(targets.map((target) => example(target, several)))].join(", ");
  if (allowed === undefined || (several && colon < 0)) return { expected: `a link such as ${form()}` };

  const [kind = "", list] = allowed.split(/[#@]/);
  const sign = signOf(allowed);
  const cut = sign === "" ? -1 : rest.indexOf(sign);
  const id = cut < 0 ? rest : rest.slice(0, cut);
  const inner = cut < 0 ? undefined : rest.slice(cut + 1);
  if (!idPattern.test(id)) return { expected: `an id of capital letters, digits, "." and "-", such as ${form()}` };
  if (sign === "" && /[#@]/.test(rest)) return { expected: `the id alone, such as ${form()}` };
  if (list !== undefined && (inner === undefined || inner === ""))
    return { expected: `the ${sign === "#" ? "row" : "revision"} as well, such as ${form()}` };
  return { kind, id, ...(sign === "#" && { row: inner ?? "" }), ...(sign === "@" && { revision: inner ?? "" }) };
}

const signOf = (text: string) => (text.includes("#") ? "#" : text.includes("@") ? "@" : "");

function example(target: string, several: boolean): string {
  const [kind = "", list] = target.split(/[#@]/);
  const id = kind
    .split("-")
    .map((word) => (word[0] ?? "").toUpperCase())
    .join("");
  const tail = list === undefined ? "" : target.includes("#") ? "#row" : "@revision";
  return `"${several ? `${kind}:` : ""}${id}-01${tail}"`;
}

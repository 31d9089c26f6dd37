import type { LinkTarget } from "../model/graph.ts";
import { kindIn, kindText, type KindText } from "../model/kind-text.ts";
import { nearestName } from "../model/nearest.ts";

const idPattern = /^[A-Z0-9][A-Z0-9.-]{0,39}$/;

/**
 * Reads a link as written against the targets its field allows (`joint`, `material-certificate#rows`,
 * `welding-procedure@revisions`). Returns the target, or a sentence saying what a link here looks like.
 */
export function parseTarget(text: string, targets: readonly string[]): LinkTarget | { readonly expected: string } {
  const several = targets.length > 1;
  const colon = text.indexOf(":");
  const named = several ? text.slice(0, Math.max(colon, 0)) : "";
  const rest = several ? text.slice(colon + 1) : text;
  const ofKind = targets.filter((target) => !several || kindIn(target) === named);
  // A kind may be named whole and by rows of several lists: what is written tells which is meant.
  const written = kindText(rest).sign;
  const allowed = ofKind.find((target) => kindText(target).sign === written) ?? ofKind[0];
  const form = (of: string | undefined) => formsOf(of === undefined ? targets : [of], several);
  if (allowed === undefined || (several && colon < 0)) {
    const near = nearestName(named, targets.map(kindIn));
    const first = near === undefined ? undefined : targets.find((target) => kindIn(target) === near);
    return { expected: `a link such as ${form(first)}` };
  }

  const { kind, sign } = kindText(allowed);
  const cut = sign === "" ? -1 : rest.indexOf(sign);
  const id = cut < 0 ? rest : rest.slice(0, cut);
  const inner = cut < 0 ? undefined : rest.slice(cut + 1);
  if (!idPattern.test(id))
    return { expected: `an id of capital letters, digits, "." and "-", such as ${form(allowed)}` };
  if (sign === "" && /[#@]/.test(rest)) return { expected: `the id alone, such as ${form(allowed)}` };
  if (sign !== "" && (inner === undefined || inner === ""))
    return { expected: `the ${sign === "#" ? "row" : "revision"} as well, such as ${form(allowed)}` };
  return { kind, id, ...(sign === "#" && { row: inner ?? "" }), ...(sign === "@" && { revision: inner ?? "" }) };
}

/** Kinds that a message names at most. */
const mostNamed = 5;

/** Examples of what a link may be, as a sentence goes on; of many kinds the first, and how many more there are. */
function formsOf(targets: readonly string[], several: boolean): string {
  const all = [...new Set(targets.map((target) => example(target, several)))];
  const more = all.length - mostNamed;
  return more <= 0 ? all.join(", ") : `${all.slice(0, mostNamed).join(", ")} or one of ${more} more`;
}

function example(target: string, several: boolean): string {
  const { kind, sign } = kindText(target);
  const id = kind
    .split("-")
    .map((word) => (word[0] ?? "").toUpperCase())
    .join("");
  return `"${printTarget(formOf(sign, { kind, id: `${id}-01` }), several)}"`;
}

/** A link in the form that a target asks for, with `row` or `revision` in the place of their names. */
export const formOf = (sign: KindText["sign"], target: LinkTarget): LinkTarget => ({
  ...target,
  ...(sign === "#" && { row: "row" }),
  ...(sign === "@" && { revision: "revision" }),
});

/** A link as a field writes it that allows these targets: with its kind where they are several. */
export function printTarget({ kind, id, row, revision }: LinkTarget, several: boolean): string {
  const inner = row !== undefined ? `#${row}` : revision !== undefined ? `@${revision}` : "";
  return `${several ? `${kind}:` : ""}${id}${inner}`;
}

/** A text that is no link of its field, without the kind, if one stands before it. */
export const withoutKind = (text: string): string => text.slice(text.indexOf(":") + 1);

/** A link in a sentence: the thing and its row, without the signs of our notation. */
export const spokenLink = (text: string): string => text.replace(/^[a-z-]+:/, "").replace("#", ", ");

import { spellControls } from "../model/spelled.ts";

const device = /^(con|prn|aux|nul|com[0-9]|lpt[0-9])(\.|$)/i;

/** Signs of a path inside the book, at most. */
export const maxPath = 200;

/** Why a name of a file or folder is not the same on every system, with what to do; undefined when it is. */
export function nameFault(name: string): { readonly why: string; readonly hint: string } | undefined {
  const hint = "rename it with letters, digits, points, hyphens and underscores";
  const odd = /[^A-Za-z0-9._ -]/u.exec(name)?.[0];
  if (odd !== undefined) {
    const code = `U+${(odd.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;
    const shown = /[\p{L}\p{N}\p{P}\p{S}]/u.test(odd) ? `"${odd}" (${code})` : code;
    return { why: `it holds the sign ${shown}, which not every system can store or show`, hint };
  }
  if (/^ | $/.test(name)) return { why: "it begins or ends with a space", hint };
  if (name.endsWith(".")) return { why: "it ends with a point, which some systems take away", hint };
  if (device.test(name)) return { why: "some systems reserve this name for a device", hint: "give it another name" };
  return undefined;
}

/** A text from outside as it can be shown in a message: unseen signs as escapes, cut if long. */
export function quoted(text: string, most = 80): string {
  const short = text.length > most ? `${text.slice(0, most - 1)}…` : text;
  return spellControls(JSON.stringify(short));
}

import { spellControls, spellControlsInLines } from "../model/spelled.ts";

/** Text of a record made safe for a terminal, on one line. */
export function plain(text: string): string {
  return spellControls(text.replaceAll(/[\t\r\n]+/g, " "));
}

const longest = 100;

/** The part of a source line around a one-based column: indented by at most two, at most 100 signs and said so by "…". */
export function excerpt(line: string, column: number): string {
  const indent = line.length - line.trimStart().length;
  const cut = Math.max(0, Math.min(indent - 2, column - 1));
  const rest = line.slice(cut).trimEnd();
  if (rest.length <= longest) return plain(rest);
  const at = column - 1 - cut;
  const from = Math.max(0, Math.min(at - 30, rest.length - longest));
  const to = from + longest;
  return `${from > 0 ? "…" : ""}${plain(rest.slice(from, to))}${to < rest.length ? "…" : ""}`;
}

/** A value as JSON for a person or the next program, with a line end: what would act on a terminal is spelled out. */
export function jsonText(value: unknown): string {
  return `${spellControlsInLines(JSON.stringify(value, null, 2))}\n`;
}

/** A fingerprint in groups of four, as it is read out and written down. */
export const inGroups = (hash: string): string => hash.replaceAll(/(.{4})(?=.)/g, "$1 ");

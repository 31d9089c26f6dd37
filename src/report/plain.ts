/** Control signs, line separators, and signs that turn the direction of writing: with those a line can lie. */
function isUnsafe(code: number): boolean {
  return (
    code < 0x20 ||
    (code >= 0x7f && code <= 0x9f) ||
    code === 0x061c ||
    (code >= 0x200e && code <= 0x200f) ||
    (code >= 0x2028 && code <= 0x202e) ||
    (code >= 0x2066 && code <= 0x2069)
  );
}

/** A text with every control and turning sign spelled out (`\u001b`), so that none of them acts. */
export function spellControls(text: string): string {
  return text.replaceAll(/[^ -~]/g, (sign) => {
    const code = sign.charCodeAt(0);
    return isUnsafe(code) ? `\\u${code.toString(16).padStart(4, "0")}` : sign;
  });
}

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

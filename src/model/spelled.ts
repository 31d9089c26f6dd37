/** Control signs, line separators, lone halves of signs, and signs that turn the direction of writing: with those a line can lie. */
const unsafe =
  /[\p{Cc}\u00ad\u061c\u200b\u200e\u200f\u2028-\u202e\u2060\u2066-\u2069\ufeff\ufdd0-\ufdef\ufff9-\uffff]|\p{Cs}/gu;

const code = (sign: string) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`;

/**
 * A text with every control and turning sign spelled out (`\u001b`), so that none of them acts: on a terminal, on a page,
 * on paper, and in JSON, where it reads the same. The one place that decides which signs these are.
 */
export function spellControls(text: string): string {
  return harmless.test(text) ? text : text.replaceAll(unsafe, code);
}

/** The same for a text of several lines: ends of lines and tabs stay. */
export function spellControlsInLines(text: string): string {
  return harmless.test(text) ? text : text.replaceAll(unsafe, (sign) => ("\n\r\t".includes(sign) ? sign : code(sign)));
}

/** Nearly all text. */
const harmless = /^[ -~]*$/;

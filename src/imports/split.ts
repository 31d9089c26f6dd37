/**
 * The values of a cell that holds several: parted by `sign`; a value that holds the sign itself stands in double quotes, and
 * a quote in it is doubled, as in CSV (RFC 4180). Blanks around a value count nothing.
 */
export function splitCell(text: string, sign: string): readonly string[] {
  const values: string[] = [];
  let at = 0;
  const blanks = () => {
    while (at < text.length && /\s/u.test(text.charAt(at)) && !text.startsWith(sign, at)) at++;
  };
  for (;;) {
    blanks();
    let value = "";
    if (text.charAt(at) === '"') {
      for (at++; at < text.length; at++) {
        if (text.charAt(at) !== '"') value += text.charAt(at);
        else if (text.charAt(at + 1) === '"') value += text.charAt(++at);
        else break;
      }
      at++;
      blanks();
    }
    const next = text.indexOf(sign, at);
    value += text.slice(at, next < 0 ? undefined : next).trim();
    if (value !== "") values.push(value);
    if (next < 0) return values;
    at = next + sign.length;
  }
}

/** Several values in one cell, so that `splitCell` gives them back. */
export function joinCell(values: readonly string[], sign: string): string {
  return values
    .map((value) =>
      value.includes(sign) || value.includes('"') || value !== value.trim()
        ? `"${value.replaceAll('"', '""')}"`
        : value,
    )
    .join(/\s/.test(sign) ? sign : `${sign} `);
}

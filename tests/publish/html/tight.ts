/** Markup without the white space around tags, so that a test reads the same however a template is laid out. */
export const tight = (markup: string): string =>
  markup
    .replaceAll(/\s+/g, " ")
    .replaceAll(/ ?\/?>/g, ">")
    .replaceAll(/> /g, ">")
    .replaceAll(/ </g, "<");

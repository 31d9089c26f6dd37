import * as numfmt from "numfmt";
import type { Style } from "./styles.ts";

/**
 * What a number format makes of a number. Known are General, `0…`, `#,##0…`, both with decimals and as a percentage, `@`,
 * and plain dates: day, month and year once each, between signs, with or without the day of the week. A tag that only
 * names a language, and a last section that only says that texts are shown as they are, change nothing.
 */
export type NumberFormat =
  | { readonly sort: "general" }
  /** `code` without what changes nothing. */
  | { readonly sort: "digits"; readonly code: string }
  /** Without a code the program shows the day in the form of its own language. */
  | { readonly sort: "day"; readonly code?: string }
  | { readonly sort: "other"; readonly shows: string };

/** The built-in date that each machine shows in its own way; and the built-in formats whose codes are the same everywhere. */
const ownDate = 14;
const everywhere = (id: number) => id <= 4 || (id >= 9 && id <= 22) || (id >= 37 && id <= 49);

export function numberFormat({ format, builtIn }: Style): NumberFormat {
  if (builtIn === ownDate) return { sort: "day" };
  if (builtIn !== undefined && !everywhere(builtIn))
    return { sort: "other", shows: `what is another in each language, by format ${builtIn}` };
  if (/^(?:general|@|general;@)$/i.test(format)) return { sort: "general" };
  if (/^\[\$-F800\]/i.test(format)) return { sort: "day" };
  const code = format.replace(/;@$/, "").replace(/\[\$-[^\]]*\]/g, "");
  if (/^(?:0+|#,##0)(?:\.0+)?(?:(?:\\? )?%)?$/.test(code)) return { sort: "digits", code };
  return dateForm(code) ?? { sort: "other", shows: otherForm(code) };
}

function dateForm(code: string): NumberFormat | undefined {
  if (!numfmt.isDateFormat(code)) return undefined;
  const signs = code.replace(/\\./g, "").replace(/"[^"]*"/g, "");
  if (/[hs]|\[m/i.test(signs))
    return { sort: "other", shows: /[dy]/i.test(signs) ? "a day with a time" : "a time or a length of time" };
  const runs = signs.toLowerCase().match(/d+|m+|y+/g) ?? [];
  const days = runs.filter((run) => run === "d" || run === "dd").length;
  const months = runs.filter((run) => run.startsWith("m")).length;
  const years = runs.filter((run) => run.startsWith("y")).length;
  if (years === 0) return { sort: "other", shows: "a day without its year" };
  if (days === 0) return { sort: "other", shows: "a month without its day" };
  const plain = days === 1 && months === 1 && years === 1 && !/[^dmy\-./, ]/i.test(signs);
  return plain ? { sort: "day", code } : { sort: "other", shows: "a date of another form" };
}

const otherForm = (code: string) =>
  /E[+-]/i.test(code) ? "a power of ten" : /[?#]\/[?#\d]/.test(code) ? "a fraction" : "a number in a form of its own";

/** Whether a text shows as it is; a format may have signs for texts too. */
export function showsTextAsIs(format: string): boolean {
  const bare = format.replace(/\\./g, "").replace(/"[^"]*"/g, '"');
  const sections = bare.split(";");
  const forText = sections.length > 3 ? sections[3] : sections.find((section) => section.includes("@"));
  return forText === undefined || forText === "@" || /^general$/i.test(forText);
}

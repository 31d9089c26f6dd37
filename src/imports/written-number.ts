import type { Reading } from "./map.ts";

export type ReadNumber = { readonly figure: string } | { readonly fault: string; readonly hint: string };

/** Why a number is not taken: no sign is declared, or its signs are not as declared. */
function undecided(text: string, { decimal, grouping }: Reading): ReadNumber {
  if (decimal === undefined)
    return {
      fault: `"${text}" may be read in two ways`,
      hint: 'say in the map which sign is the decimal sign ("decimal") and which stands between thousands ("grouping")',
    };
  const parts =
    grouping === undefined ? "none is declared to stand between thousands" : `"${grouping}" between thousands`;
  return {
    fault: `"${text}" is no number with "${decimal}" as decimal sign, and ${parts}`,
    hint: 'correct the cell, or what the map declares ("decimal", "grouping")',
  };
}

/**
 * A number that is written as text, with a point as decimal sign: `1.234,5` with a decimal comma and points between
 * thousands is `1234.5`. Without a declared sign only digits are read.
 */
export function readNumber(text: string, reading: Reading): ReadNumber {
  const { decimal, grouping } = reading;
  const [, written = "", digits = ""] = /^([-−+]?)(.*)$/u.exec(text) ?? [];
  const sign = written === "−" ? "-" : written;
  if (/^\d+$/.test(digits)) return { figure: sign + digits };
  if (/^\d+([.,]\d+)?[eE][+-]?\d+$/.test(digits))
    return {
      fault: `"${text}" is a number in powers of ten, as a spreadsheet shows a long one: its last digits are lost`,
      hint: "give the column the format of text, and type the digits from the paper",
    };
  if (!/^\d[\d.,'’\s]*\d$/u.test(digits)) return { fault: `"${text}" is no number`, hint: "" };
  if (decimal === undefined) return undecided(text, reading);
  const [whole = "", fraction, ...more] = digits.split(decimal);
  if (more.length > 0 || (fraction !== undefined && !/^\d+$/.test(fraction))) return undecided(text, reading);
  const plain = ungrouped(whole, grouping);
  if (plain === undefined) return undecided(text, reading);
  return { figure: sign + plain + (fraction === undefined ? "" : `.${fraction}`) };
}

/** Whole digits without the signs between thousands; undefined where others stand there, or not in threes. */
function ungrouped(whole: string, grouping: string | undefined): string | undefined {
  if (/^\d+$/.test(whole)) return whole;
  if (grouping === undefined) return undefined;
  const sign = grouping === " " ? /[\s\u00a0\u2009\u202f]/u : grouping === "'" ? /['’]/u : undefined;
  const parts = whole.split(sign ?? grouping);
  const inThrees = parts.every((part, at) => (at === 0 ? /^\d{1,3}$/ : /^\d{3}$/).test(part));
  return inThrees ? parts.join("") : undefined;
}

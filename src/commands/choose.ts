import { nearestIds } from "../link/alike.ts";
import { parseDate } from "../model/dates.ts";
import { plain } from "../report/plain.ts";
import { UsageError } from "./command.ts";

/** "; did you mean a or b?", or nothing. */
export const didYouMean = (names: readonly string[]): string =>
  names.length === 0 ? "" : `; did you mean ${names.join(" or ")}?`;

/** What an option chooses from a list; else a `UsageError` that names the choices and what was probably meant. */
export function chosen<T extends { readonly id: string; readonly title: string }>(
  option: string,
  name: string | undefined,
  list: readonly T[],
): T {
  const found = list.find(({ id }) => id === name);
  if (found !== undefined) return found;
  const choices = list.map(({ id, title }) => `\n  ${id}  ${title}`).join("");
  const near = nearestIds(
    name ?? "",
    list.map(({ id }) => id),
  );
  throw new UsageError(
    name === undefined
      ? `say which ${option} with --${option}; there are:${choices}`
      : `there is no ${option} "${plain(name)}"${near.length === 0 ? "; there" : `${didYouMean(near)} There`} are:${choices}`,
  );
}

/** A day given as an option, or undefined. */
export function dayOption(option: string, text: string | undefined): string | undefined {
  if (text === undefined) return undefined;
  if (/^\d{4}-\d{2}-\d{2}$/.test(text) && parseDate(text).ok) return text;
  throw new UsageError(`--${option} is "${plain(text)}"; expected a day as year, month, day: 2026-03-09`);
}

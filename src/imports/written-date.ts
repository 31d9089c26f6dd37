import { parseDate } from "../model/dates.ts";
import type { Cell } from "../sheets/cells.ts";
import type { DateOrder, Reading } from "./map.ts";

export type ReadDate = { readonly date: string } | { readonly fault: string; readonly hint: string };

const form = /^(\d{1,4})\s*[./-]\s*(\d{1,2})\s*[./-]\s*(\d{1,4})(?:[ T,]+(\d{1,2})[:.](\d{2})(?::(\d{2}))?)?$/;

/** A date that is written as text: `2026-01-12` is always read, `12.01.2026` in the order the map declares. */
export function readDate(text: string, { dates, offset }: Reading): ReadDate {
  if (/^\d{4}-\d{2}-\d{2}/.test(text)) {
    const parsed = parseDate(text);
    if (parsed.ok) return { date: text };
  }
  const match = form.exec(text);
  if (match === null) return { fault: `"${text}" is no date`, hint: "write it as 2026-01-12" };
  const [, a = "", b = "", c = "", hours, minutes, seconds] = match;
  if (dates === undefined)
    return {
      fault: `"${text}": which is the day and which the month is not said`,
      hint: 'declare the order in the map, such as "dates": "day-month-year"',
    };
  const [year, month, day] = inOrder(a, b, c, dates);
  if (year.length !== 4 && [a, b, c].some((part) => part.length === 4))
    return {
      fault: `"${text}" is not written in the order ${dates}: its year does not stand ${dates === "year-month-day" ? "first" : "last"}`,
      hint: "write it as 2026-01-12, or say its order in a map of the sheet",
    };
  if (year.length !== 4)
    return {
      fault: `"${text}" has no year of four digits in the order ${dates}`,
      hint: "write the year in full, or correct the order in the map",
    };
  if (Number(month) < 1 || Number(month) > 12)
    return {
      fault: `"${text}" is no date in the order ${dates}: there is no month ${Number(month)}`,
      hint: "correct the cell, or the order in the map",
    };
  const iso = `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
  const time =
    hours === undefined
      ? ""
      : `${hours.padStart(2, "0")}:${minutes ?? "00"}${seconds === undefined ? "" : `:${seconds}`}`;
  return withTime(text, iso, time, offset);
}

/** The day of a true date cell, with its time where it shows one. */
export function dateOfCell(cell: Cell, { offset }: Reading): ReadDate {
  const day = cell.day ?? "";
  const shown = cell.shown ?? "";
  const time = /(\d{1,2}):(\d{2})(?::(\d{2}))?/.exec(shown);
  if (time === null) return { date: day };
  if (/[ap]\.?m/i.test(shown))
    return { fault: `"${shown}" shows a time with am or pm`, hint: "give the cell a format of 24 hours" };
  const [, hours = "", minutes = "", seconds] = time;
  const clock = `${hours.padStart(2, "0")}:${minutes}${seconds === undefined ? "" : `:${seconds}`}`;
  return withTime(shown, day, clock, offset);
}

function withTime(text: string, day: string, time: string, offset: string | undefined): ReadDate {
  if (time !== "" && offset === undefined)
    return {
      fault: `"${text}" has a time, and its offset from UTC is not said`,
      hint: 'declare it in the map, such as "offset": "+01:00"',
    };
  const date = time === "" ? day : `${day}T${time}${offset ?? ""}`;
  const parsed = parseDate(date);
  if (parsed.ok) return { date };
  return {
    fault: `"${text}" is no date in the declared order: ${parsed.problem.hint}`,
    hint: "correct the cell, or the order in the map",
  };
}

function inOrder(
  a: string,
  b: string,
  c: string,
  order: DateOrder,
): readonly [year: string, month: string, day: string] {
  if (order === "year-month-day") return [a, b, c];
  return order === "day-month-year" ? [c, b, a] : [c, a, b];
}

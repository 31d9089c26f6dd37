import { dayLength, daysInMonth, midnightOf } from "./calendar.ts";
import type { ValueProblem } from "./quantity-problem.ts";

export { addDays, addMonths, compareDays, daysBetween } from "./calendar.ts";

/** A day, or an instant with its offset from UTC, as a record writes it. */
export interface DateValue {
  readonly text: string;
  /** ms since 1970: of a day its first and last in UTC, of a time twice the instant. */
  readonly from: number;
  readonly to: number;
  readonly precision: "day" | "time";
  /** The calendar day as written: `2026-03-09`. */
  readonly day: string;
  /** Minutes east of UTC; 0 for a day. */
  readonly offset: number;
}

export type ParsedDate =
  { readonly ok: true; readonly date: DateValue } | { readonly ok: false; readonly problem: ValueProblem };

const form = /^(\d{4})-(\d{2})-(\d{2})(?:T(\d{2}):(\d{2})(?::(\d{2})(?:\.(\d{1,3}))?)?(Z|([+-])(\d{2}):(\d{2})))?$/;
const earliestYear = 1900;
const latestYear = 2199;
const minute = 60_000;
const hour = 60 * minute;
const widestOffset = 14 * 60;

/** Reads `2026-03-09` or `2026-03-09T14:30+01:00` (seconds may follow; `Z` is +00:00). Nothing else is a date here. */
export function parseDate(text: string): ParsedDate {
  const match = form.exec(text);
  if (match === null) return refuse(text, formAdvice(text));
  const [, year = "", month = "", date = "", hours, minutes, seconds = "0", fraction = "", zone] = match;
  const [sign, offsetHours = "0", offsetMinutes = "0"] = match.slice(9);
  const day = `${year}-${month}-${date}`;
  const midnight = midnightOf(day);
  if (midnight === undefined) return refuse(text, calendarAdvice(Number(year), Number(month), Number(date)));
  if (Number(year) < earliestYear || Number(year) > latestYear)
    return refuse(text, `the year ${year} lies outside ${earliestYear} to ${latestYear}`);
  if (hours === undefined || minutes === undefined || zone === undefined)
    return { ok: true, date: { text, from: midnight, to: midnight + dayLength - 1, precision: "day", day, offset: 0 } };
  if (hours === "24") return refuse(text, "midnight is written 00:00 of the day that begins");
  if (Number(hours) > 23 || Number(minutes) > 59 || Number(seconds) > 59)
    return refuse(text, `there is no time ${text.slice(11, text.length - zone.length)}`);
  const offset = (sign === "-" ? -1 : 1) * (Number(offsetHours) * 60 + Number(offsetMinutes));
  if (zone === "-00:00") return refuse(text, "-00:00 means that the offset is unknown: state the offset of the place");
  if (Math.abs(offset) > widestOffset || Number(offsetMinutes) > 59)
    return refuse(text, `there is no offset ${zone} from UTC`);
  const clock =
    Number(hours) * hour + Number(minutes) * minute + Number(seconds) * 1000 + Number(fraction.padEnd(3, "0"));
  const instant = midnight + clock - offset * minute;
  return { ok: true, date: { text, from: instant, to: instant, precision: "time", day, offset } };
}

/** The calendar day as written, whatever the offset: `2026-03-09`. */
export function dayOf(date: DateValue): string {
  return date.day;
}

/** Whether `a` can have been before `b` or at the same time: a day is possible from its first to its last moment. */
export function canPrecede(a: DateValue, b: DateValue): "yes" | "no" {
  const shift = shiftFor(a, b);
  return a.from + shift(a) <= b.to + shift(b) ? "yes" : "no";
}

/**
 * The least and the most hours from `a` to `b` that the texts allow; equal for two times, negative where `b` may be
 * earlier. A day beside a time is the day where that time was written.
 */
export function hoursBetween(a: DateValue, b: DateValue): { readonly least: number; readonly most: number } {
  const shift = shiftFor(a, b);
  const end = (date: DateValue) => (date.precision === "day" ? date.to + 1 : date.to) + shift(date);
  return { least: (b.from + shift(b) - end(a)) / hour, most: (end(b) - a.from - shift(a)) / hour };
}

/**
 * Two days and two times are compared as they are. A day beside a time: both as the clock on the wall showed it, so that a
 * time lies within the day it was written with.
 */
function shiftFor(a: DateValue, b: DateValue): (date: DateValue) => number {
  return a.precision === b.precision ? () => 0 : (date) => date.offset * minute;
}

function refuse(found: string, hint: string): ParsedDate {
  const expected = "a date YYYY-MM-DD, or a date and time with its offset from UTC";
  return { ok: false, problem: { found, expected, example: "2026-03-09 or 2026-03-09T14:30+01:00", hint } };
}

function calendarAdvice(year: number, month: number, date: number): string {
  if (month < 1 || month > 12) return `there is no month ${month}: the order is year, month, day`;
  const name = `${year}-${String(month).padStart(2, "0")}`;
  return `${name} has no day ${date}: it has ${daysInMonth(year, month)} days`;
}

/** What each wrong form asks for; the first that fits is said. */
const advice: readonly (readonly [form: RegExp, hint: string])[] = [
  [/^\s|\s$/, "take away the space before or after the date"],
  [
    /^\d{4}-\d{2}-\d{2}[Tt ]\d{2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?$/,
    "add the offset of the place from UTC, such as +01:00",
  ],
  [/^\d{4}-\d{2}-\d{2} \d{2}:\d{2}/, 'write "T" between date and time'],
  [
    /^\d{4}-\d{2}-\d{2}[Tt].*(?:[+-]\d{2}|[+-]\d{4}|z)$/,
    "write the offset with hours and minutes, such as +01:00, or Z",
  ],
  [/^\d{1,2}[./-]\d{1,2}[./-]\d{2,4}\b/, "day and month are not told apart here: state the date as 2026-03-09"],
  [/^\d{4}-\d{1,2}-\d{1,2}$/, "write month and day with two digits: state the date as 2026-03-09"],
  [/^\d{4}-\d{2}$/, "a month is no date: state the day"],
  [/^\d{4}-W\d/, "a week is no date: state the day"],
];

function formAdvice(text: string): string {
  return advice.find(([wrong]) => wrong.test(text))?.[1] ?? "state the date as 2026-03-09";
}

import { ProgramError } from "./program-error.ts";

/** Days of the calendar as text `2026-03-09`, which sorts in the order of time. No clock and no time zone is read. */

const dayForm = /^(\d{4})-(\d{2})-(\d{2})$/;
export const dayLength = 86_400_000;

/** Midnight in UTC of a day, in ms since 1970, or undefined when the calendar has no such day. */
export function midnightOf(day: string): number | undefined {
  const [, year, month, date] = dayForm.exec(day) ?? [];
  if (year === undefined || month === undefined || date === undefined) return undefined;
  const [inYear, inMonth] = [Number(year), Number(month)];
  if (inMonth < 1 || inMonth > 12 || Number(date) < 1 || Number(date) > daysInMonth(inYear, inMonth)) return undefined;
  return midnight(inYear, inMonth, Number(date));
}

/** The day of an instant, in UTC. */
export function dayAt(instant: number): string {
  return new Date(instant).toISOString().slice(0, 10);
}

/** Number of days in a month; months count from 1. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** The day `days` later, or earlier if negative. */
export function addDays(day: string, days: number): string {
  return dayAt(known(day) + whole(days) * dayLength);
}

/**
 * The last day of a period of `months` that is counted from `day`, inclusive: the same day of the month, or the last day
 * of a month that has no such day.
 */
export function addMonths(day: string, months: number): string {
  const from = new Date(known(day));
  const count = from.getUTCFullYear() * 12 + from.getUTCMonth() + whole(months);
  const [year, month] = [Math.floor(count / 12), (((count % 12) + 12) % 12) + 1];
  return dayAt(midnight(year, month, Math.min(from.getUTCDate(), daysInMonth(year, month))));
}

/** Days from `a` to `b`: 1 from one day to the next, negative when `b` is earlier. */
export function daysBetween(a: string, b: string): number {
  return (known(b) - known(a)) / dayLength;
}

/** Negative, 0 or positive: whether the day `a` is before, equal to or after `b`. */
export function compareDays(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

/** As Date.UTC, which takes the years 0 to 99 for 1900 to 1999. */
function midnight(year: number, month: number, date: number): number {
  return year < 100 ? new Date(0).setUTCFullYear(year, month - 1, date) : Date.UTC(year, month - 1, date);
}

function known(day: string): number {
  const at = midnightOf(day);
  if (at === undefined) throw new ProgramError(`"${day}" is no day of the calendar`);
  return at;
}

function whole(count: number): number {
  if (!Number.isInteger(count)) throw new ProgramError(`a period of ${count} is no whole number of days or months`);
  return count;
}

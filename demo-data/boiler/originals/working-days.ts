import { daysLater } from "../../sheets/original.ts";

const isWeekend = (day: string) => [0, 6].includes(new Date(`${day}T00:00:00Z`).getUTCDay());

/** The day so many working days after another. */
export function workingDaysLater(day: string, days: number): string {
  let now = day;
  for (let left = days; left > 0;) {
    now = daysLater(now, 1);
    if (!isWeekend(now)) left -= 1;
  }
  return now;
}

/** The earlier of two days. */
export const earlier = (one: string, other: string): string => (one < other ? one : other);

/** The last of several days; "" where there is none. */
export const lastOf = (days: readonly (string | undefined)[]): string =>
  days
    .filter((day) => day !== undefined)
    .sort()
    .at(-1) ?? "";

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dayAt, daysInMonth, midnightOf } from "../../src/model/calendar.ts";
import {
  addDays,
  addMonths,
  canPrecede,
  compareDays,
  dayOf,
  daysBetween,
  hoursBetween,
  parseDate,
  type DateValue,
} from "../../src/model/dates.ts";

function date(text: string): DateValue {
  const parsed = parseDate(text);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.problem.hint}`);
  return parsed.date;
}

function hint(text: string): string {
  const parsed = parseDate(text);
  if (parsed.ok) throw new Error(`${text} was read`);
  expect(parsed.problem.found).toBe(text);
  return parsed.problem.hint;
}

const anyDay = fc
  .integer({ min: Date.UTC(1900, 0, 1), max: Date.UTC(2199, 11, 31) })
  .map((instant) => new Date(instant).toISOString().slice(0, 10));

describe("what is read", () => {
  test("a day is the whole day", () => {
    expect(date("2026-03-09")).toEqual({
      text: "2026-03-09",
      from: Date.UTC(2026, 2, 9),
      to: Date.UTC(2026, 2, 10) - 1,
      precision: "day",
      day: "2026-03-09",
      offset: 0,
    });
  });

  test("a time is an instant, and keeps the day as written", () => {
    const late = date("2026-03-09T23:30-02:00");
    expect(late).toMatchObject({ from: Date.UTC(2026, 2, 10, 1, 30), precision: "time", offset: -120 });
    expect(late.to).toBe(late.from);
    expect(dayOf(late)).toBe("2026-03-09");
    expect(date("2026-03-09T14:30:15.25+05:45").from).toBe(Date.UTC(2026, 2, 9, 8, 45, 15, 250));
    expect(date("2026-03-09T14:30Z").from).toBe(date("2026-03-09T15:30+01:00").from);
  });

  test("leap days, where there are some", () => {
    for (const day of ["2024-02-29", "2000-02-29"]) expect(dayOf(date(day))).toBe(day);
    for (const day of ["2026-02-29", "2100-02-29"]) expect(hint(day)).toContain("has no day 29: it has 28 days");
  });
});

describe("what is refused", () => {
  const table: readonly (readonly [text: string, hint: string])[] = [
    ["2026-02-30", "2026-02 has no day 30: it has 28 days"],
    ["2026-04-31", "2026-04 has no day 31: it has 30 days"],
    ["2026-03-00", "2026-03 has no day 0: it has 31 days"],
    ["2026-13-09", "there is no month 13: the order is year, month, day"],
    ["2026-00-09", "there is no month 0: the order is year, month, day"],
    ["03/04/26", "day and month are not told apart here: state the date as 2026-03-09"],
    ["09.03.2026", "day and month are not told apart here: state the date as 2026-03-09"],
    ["2026-3-9", "write month and day with two digits: state the date as 2026-03-09"],
    ["2026-03", "a month is no date: state the day"],
    ["2026-W11", "a week is no date: state the day"],
    ["9 March 2026", "state the date as 2026-03-09"],
    ["", "state the date as 2026-03-09"],
    ["2026-03-09 ", "take away the space before or after the date"],
    ["2026-03-09T14:30", "add the offset of the place from UTC, such as +01:00"],
    ["2026-03-09 14:30", "add the offset of the place from UTC, such as +01:00"],
    ["2026-03-09 14:30+01:00", 'write "T" between date and time'],
    ["2026-03-09T14:30+01", "write the offset with hours and minutes, such as +01:00, or Z"],
    ["2026-03-09T14:30+0100", "write the offset with hours and minutes, such as +01:00, or Z"],
    ["2026-03-09T14:30-00:00", "-00:00 means that the offset is unknown: state the offset of the place"],
    ["2026-03-09T14:30+14:01", "there is no offset +14:01 from UTC"],
    ["2026-03-09T14:30+01:60", "there is no offset +01:60 from UTC"],
    ["2026-03-09T24:00+01:00", "midnight is written 00:00 of the day that begins"],
    ["2026-03-09T25:10+01:00", "there is no time 25:10"],
    ["2026-03-09T14:60Z", "there is no time 14:60"],
    ["2026-03-09T14:30:60Z", "there is no time 14:30:60"],
    ["1899-12-31", "the year 1899 lies outside 1900 to 2199"],
    ["2200-01-01", "the year 2200 lies outside 1900 to 2199"],
    ["0026-03-09", "the year 0026 lies outside 1900 to 2199"],
  ];
  for (const [text, expected] of table) test(`"${text}"`, () => expect(hint(text)).toBe(expected));

  test("the ends of the range of years and offsets are read", () => {
    for (const text of ["1900-01-01", "2199-12-31", "2026-03-09T14:30+14:00", "2026-03-09T23:59:59-14:00"])
      expect(date(text).text).toBe(text);
  });

  test("any text gets an answer", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 40 }), (text) => {
        const parsed = parseDate(text);
        if (!parsed.ok) expect(parsed.problem.hint).not.toBe("");
        else expect(parsed.date.text).toBe(text);
      }),
    );
  });
});

describe("order", () => {
  test("of days", () => {
    expect(canPrecede(date("2026-03-09"), date("2026-03-10"))).toBe("yes");
    expect(canPrecede(date("2026-03-09"), date("2026-03-09"))).toBe("yes");
    expect(canPrecede(date("2026-03-10"), date("2026-03-09"))).toBe("no");
  });

  test("of times, by the instant and not by the clock on the wall", () => {
    expect(canPrecede(date("2026-03-09T14:30+01:00"), date("2026-03-09T13:30Z"))).toBe("yes");
    expect(canPrecede(date("2026-03-09T14:31+01:00"), date("2026-03-09T13:30Z"))).toBe("no");
    expect(canPrecede(date("2026-03-10T00:30+02:00"), date("2026-03-09T23:00Z"))).toBe("yes");
  });

  test("of a day and a time: the day where the time was written, whatever its offset", () => {
    const day = date("2026-03-09");
    for (const time of ["2026-03-09T00:00+14:00", "2026-03-09T23:59-12:00", "2026-03-09T12:00Z"].map(date)) {
      expect(canPrecede(day, time)).toBe("yes");
      expect(canPrecede(time, day)).toBe("yes");
    }
    expect(canPrecede(day, date("2026-03-08T23:59-12:00"))).toBe("no");
    expect(canPrecede(date("2026-03-10T00:01+14:00"), day)).toBe("no");
  });

  test("of two dates is possible in at least one direction", () => {
    const anyDate = fc.oneof(
      anyDay,
      fc
        .tuple(anyDay, fc.integer({ min: 0, max: 23 }), fc.constantFrom("Z", "+05:30", "-08:00"))
        .map(([day, hours, zone]) => `${day}T${String(hours).padStart(2, "0")}:15${zone}`),
    );
    fc.assert(
      fc.property(anyDate, anyDate, (a, b) => {
        const [one, other] = [date(a), date(b)];
        expect(canPrecede(one, other) === "yes" || canPrecede(other, one) === "yes").toBe(true);
        const there = hoursBetween(one, other);
        const back = hoursBetween(other, one);
        expect(there.least).toBeLessThanOrEqual(there.most);
        expect(there.least).toBeCloseTo(-back.most, 9);
      }),
    );
  });
});

describe("hours between", () => {
  test("two times are exact", () => {
    const between = hoursBetween(date("2026-03-09T16:00+01:00"), date("2026-03-10T08:00+01:00"));
    expect(between).toEqual({ least: 16, most: 16 });
    expect(hoursBetween(date("2026-03-29T00:00+01:00"), date("2026-03-29T06:00+02:00"))).toEqual({ least: 5, most: 5 });
  });

  test("days leave room", () => {
    expect(hoursBetween(date("2026-03-09"), date("2026-03-10"))).toEqual({ least: 0, most: 48 });
    expect(hoursBetween(date("2026-03-09"), date("2026-03-09"))).toEqual({ least: -24, most: 24 });
  });

  test("a day and a time", () => {
    expect(hoursBetween(date("2026-03-09T16:00+09:00"), date("2026-03-10"))).toEqual({ least: 8, most: 32 });
    expect(hoursBetween(date("2026-03-09"), date("2026-03-10T08:00-05:00"))).toEqual({ least: 8, most: 32 });
  });
});

describe("calendar", () => {
  test("months end on the same day of the month or its last", () => {
    expect(addMonths("2026-03-09", 6)).toBe("2026-09-09");
    expect(addMonths("2026-08-31", 6)).toBe("2027-02-28");
    expect(addMonths("2023-08-31", 6)).toBe("2024-02-29");
    expect(addMonths("2024-02-29", 12)).toBe("2025-02-28");
    expect(addMonths("2024-02-29", 48)).toBe("2028-02-29");
    expect(addMonths("2026-12-31", 2)).toBe("2027-02-28");
    expect(addMonths("2026-03-31", -1)).toBe("2026-02-28");
    expect(addMonths("2026-01-15", -13)).toBe("2024-12-15");
    expect(addMonths("2026-03-09", 0)).toBe("2026-03-09");
  });

  test("days cross the ends of months and years", () => {
    expect(addDays("2026-12-31", 1)).toBe("2027-01-01");
    expect(addDays("2024-02-28", 1)).toBe("2024-02-29");
    expect(addDays("2026-03-01", -1)).toBe("2026-02-28");
    expect(daysBetween("2026-01-01", "2027-01-01")).toBe(365);
    expect(daysBetween("2024-01-01", "2025-01-01")).toBe(366);
  });

  test("order", () => {
    expect(compareDays("2026-03-09", "2026-03-10")).toBeLessThan(0);
    expect(compareDays("2026-03-09", "2026-03-09")).toBe(0);
    expect(compareDays("2026-03-10", "2026-03-09")).toBeGreaterThan(0);
  });

  test("what is no day or no whole number is a mistake in the program", () => {
    expect(() => addDays("2026-02-30", 1)).toThrow('"2026-02-30" is no day of the calendar');
    expect(() => addMonths("2026-02-28", 0.5)).toThrow("a period of 0.5 is no whole number");
    expect(midnightOf("2026-3-9")).toBeUndefined();
  });

  test("adding and counting days agree, on any day", () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -4000, max: 4000 }), (day, days) => {
        const later = addDays(day, days);
        expect(daysBetween(day, later)).toBe(days);
        expect(addDays(later, -days)).toBe(day);
      }),
    );
  });

  test("a period of months lands in the month asked for, on the same day or the last", () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -60, max: 60 }), (day, months) => {
        const [year = 0, month = 0, of = 0] = day.split("-").map(Number);
        const [laterYear = 0, laterMonth = 0, laterOf = 0] = addMonths(day, months).split("-").map(Number);
        expect(laterYear * 12 + laterMonth).toBe(year * 12 + month + months);
        expect(laterOf).toBe(Math.min(of, daysInMonth(laterYear, laterMonth)));
      }),
    );
  });

  test("the day of a day's midnight is that day", () => {
    fc.assert(fc.property(anyDay, (day) => dayAt(midnightOf(day) ?? Number.NaN) === day));
  });
});

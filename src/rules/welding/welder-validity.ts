import type { Measure } from "../../model/quantity.ts";
import { addMonths, compareDays, type DateValue } from "../../model/dates.ts";

export interface Validity {
  readonly testDate: DateValue;
  /** Printed on the certificate, or on its prolongation. */
  readonly validTo: DateValue | undefined;
  readonly route: string;
  readonly confirmations: readonly DateValue[];
}

export interface Periods {
  /** Months a confirmation holds. */
  readonly confirmation: number;
  /** Months a test holds when the certificate prints no end. */
  readonly revalidation: number;
  /** The same where the route is a new test. */
  readonly retest: number;
}

/**
 * Why a qualification was not in force on a day; undefined: it was. Confirmations form an unbroken chain from the day of
 * the test, each made on or before the last day of the running half-year: a late one revives nothing.
 */
export function notInForce(validity: Validity, day: string, periods: Periods): string | undefined {
  const { testDate, validTo, route, confirmations } = validity;
  if (compareDays(testDate.day, day) > 0) return `its test was made on ${testDate.day}`;
  const held = route === "9.3a" ? periods.retest : periods.revalidation;
  const printed = validTo?.day ?? (route === "9.3c" ? undefined : addMonths(testDate.day, held));
  if (printed !== undefined && compareDays(day, printed) > 0) return `it ended on ${printed}`;
  let last = testDate.day;
  const made = confirmations
    .map((one) => one.day)
    .filter((one) => compareDays(one, testDate.day) >= 0 && compareDays(one, day) <= 0)
    .sort();
  for (const confirmed of made) {
    const end = addMonths(last, periods.confirmation);
    if (compareDays(confirmed, end) > 0) return `it lapsed on ${end}; the confirmation of ${confirmed} came too late`;
    last = confirmed;
  }
  const end = addMonths(last, periods.confirmation);
  if (compareDays(day, end) <= 0) return undefined;
  return `it lapsed on ${end}: not confirmed since ${last === testDate.day ? `its test of ${last}` : last}`;
}

/** The periods of the profile, as rules read them. */
export const periodsOf = (months: {
  readonly confirmationMonths: Measure;
  readonly revalidationMonths: Measure;
  readonly retestMonths: Measure;
}): Periods => ({
  confirmation: months.confirmationMonths.value,
  revalidation: months.revalidationMonths.value,
  retest: months.retestMonths.value,
});

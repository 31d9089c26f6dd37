import { compareDays, type DateValue } from "../../model/dates.ts";
import { anyOf, date, text, things, type Thing } from "../../model/input.ts";

const held = { method: text("method"), level: text("level"), from: date("issued"), to: date("validTo") };

/** What every rule about certificates of testing personnel finds, whoever looks: a person without it in a method. */
export const certificateFault = "tester-certified";

/** Certificates of testing personnel of one person, as far as the book shows them. */
export const certificates = anyOf(things("<ndt-personnel:person>", held));

type Certificate = Thing<typeof held>;

/** Where a person's certificate in a method would be, if the book held it. */
export const certificateIn = (method: string): string => `<ndt-personnel:person>[method="${method}"]`;

/**
 * Whether a person held a level in a method on a day: "not shown" where the certificate at hand begins later, for the one it
 * renewed is kept by the employer; "unknown" where no certificate in the method is at hand.
 */
export function heldOn(
  all: readonly Certificate[],
  method: string,
  least: number,
  day: DateValue,
): "yes" | "no" | "not shown" | "unknown" {
  const own = all.filter((one) => one.method === method);
  if (own.length === 0) return "unknown";
  const enough = own.filter(({ level }) => Number(level) >= least);
  const begun = enough.filter(({ from }) => compareDays(from.day, day.day) <= 0);
  if (begun.some(({ to }) => compareDays(day.day, to.day) <= 0)) return "yes";
  return enough.length > 0 && begun.length === 0 ? "not shown" : "no";
}

/** What a person holds in a method, for the sentence that says why. */
export const heldIn = (all: readonly Certificate[], method: string): string =>
  all
    .filter((one) => one.method === method)
    .map(({ $, level, from, to }) => `${$.name}: level ${level}, ${from.day} to ${to.day}`)
    .join("; ");

import { commonPractice } from "../../model/basis.ts";
import { canPrecede, type DateValue } from "../../model/dates.ts";
import { anyOf, date, optional, text, things, type Thing } from "../../model/input.ts";

export const basis = commonPractice("register of people: who may sign what, from when to when");

export const person = {
  roles: anyOf(things("roles[]", { role: text("role"), from: optional(date("from")), to: optional(date("to")) })),
};
/** What every rule about roles finds, whoever looks: a person who does not hold one. */
export const roleFault = "role-held";

export type Person = Thing<typeof person>;

/** Whether a person held one of some roles on a day; without a day, whether ever. */
export function holds(who: Person, roles: readonly string[], day: DateValue | undefined): boolean {
  return who.roles.some(
    ({ role, from, to }) =>
      roles.includes(role) &&
      (day === undefined ||
        ((from === undefined || canPrecede(from, day) === "yes") &&
          (to === undefined || canPrecede(day, to) === "yes"))),
  );
}

export const said = (who: Person) =>
  who.roles.length === 0
    ? "the register gives no role"
    : `the register gives: ${who.roles.map(({ role, from, to }) => [role, from && `from ${from.text}`, to && `to ${to.text}`].filter(Boolean).join(" ")).join("; ")}`;

export const hint = "correct the register of people, or have it signed by who had the authority";

import { addMonths, compareDays, type DateValue } from "../../model/dates.ts";
import { anyOf, date, quantity, text, thing, things, type Thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { certifiedMethod } from "../../requirements/testing-conditions.ts";
import { personnel } from "./testers.ts";

const certificate = {
  method: text("method"),
  level: text("level"),
  from: date("issued"),
  to: date("validTo"),
} as const;
type Certificate = Thing<typeof certificate>;

/** Certificates for a method, of a level at least, that hold on a day. */
const inForce = <C extends Certificate>(all: readonly C[], method: string, level: number, day: DateValue) =>
  all.filter(
    (one) =>
      one.method === method &&
      Number(one.level) >= level &&
      compareDays(one.from.day, day.day) <= 0 &&
      compareDays(day.day, one.to.day) <= 0,
  );

export const reviewerCertified = rule({
  id: "reviewer-certified",
  title: "Who reviews a test report is certified for the method and sees well",
  basis: personnel,
  kind: "ndt-report",
  when: [certifiedMethod],
  severity: "query",
  owner: "testing",
  inputs: {
    method: text("method"),
    day: date("date"),
    least: quantity("profile.testerLevelLeast", "1"),
    vision: quantity("profile.nearVisionMonths", "1"),
    reviewer: thing("reviewer", {
      certificates: anyOf(things("<ndt-personnel:person>", { ...certificate, seen: date("visionTest") })),
    }),
  },
  *check({ method, day, least, vision, reviewer }, report) {
    const valid = inForce(reviewer.certificates, method, least.value, day);
    const sees = valid.some(({ seen }) => compareDays(day.day, addMonths(seen.day, vision.value)) <= 0);
    if (sees) return;
    yield {
      at: "reviewer",
      accuses: [],
      on: reviewer,
      name: method,
      message: `${reviewer.$.name} reviewed report ${report.name} and ${valid.length === 0 ? `held no ${method} certificate of level ${least.text} or higher` : "no vision test covers the day"} on ${day.day}`,
      why:
        reviewer.certificates
          .filter((one) => one.method === method)
          .map(
            (one) =>
              `${one.$.name}: level ${one.level}, ${one.from.day} to ${one.to.day}, vision tested on ${one.seen.day}`,
          )
          .join("; ") || `no certificate of ${method} is on record`,
      hint: "add the certificate that covers the day, or name who judged the result",
    };
  },
  examples: [
    { name: "level 2", given: reviewed({}), objections: [] },
    { name: "level 3", given: reviewed({ level: "3" }), objections: [] },
    {
      name: "level 1",
      given: reviewed({ level: "1" }),
      objections: ["N3 reviewed report X-01 and held no RT certificate of level 2 or higher on 2026-03-10"],
    },
    {
      name: "of another method",
      given: reviewed({ method: "UT" }),
      objections: ["N3 reviewed report X-01 and held no RT certificate of level 2 or higher on 2026-03-10"],
    },
    {
      name: "vision tested too long ago",
      given: reviewed({ seen: "2025-01-10" }),
      objections: ["N3 reviewed report X-01 and no vision test covers the day on 2026-03-10"],
    },
  ],
});

function reviewed(changes: Readonly<Record<string, string>>) {
  const sound = { $: "NC-1", method: "RT", level: "2", from: "2025-06-01", to: "2030-05-31", seen: "2025-11-10" };
  return {
    method: "RT",
    day: "2026-03-10",
    least: "2",
    vision: "12",
    reviewer: { $: "N3", certificates: [{ ...sound, ...changes }] },
  };
}

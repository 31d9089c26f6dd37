import { addMonths, compareDays } from "../model/dates.ts";
import { date, optional, quantity, text } from "../model/input.ts";
import { rule } from "../model/rule.ts";
import { personnel } from "../rules/ndt/testers.ts";
import { ordered } from "./ordered.ts";

export const testerInForce = rule({
  id: "tester-in-force",
  title: "A tester's certificate has not ended on the day of the order",
  basis: personnel,
  kind: "ndt-personnel",
  severity: "note",
  owner: "testing",
  inputs: { ...ordered, method: text("method"), to: date("validTo") },
  *check({ ordered: day, method, to }, certificate) {
    if (compareDays(day.day, to.day) > 0)
      yield {
        at: "to",
        message: `tester's certificate ${certificate.name} (${method}) has ended on ${day.day}, the day of the order`,
        why: `it was valid to ${to.day}`,
        hint: "add the renewed certificate as a record of its own",
      };
  },
  examples: [
    { name: "on the last day", given: { ordered: "2026-06-30", method: "RT", to: "2026-06-30" }, objections: [] },
    {
      name: "a day later",
      given: { ordered: "2026-07-01", method: "RT", to: "2026-06-30" },
      objections: ["tester's certificate X-01 (RT) has ended on 2026-07-01, the day of the order"],
    },
  ],
});

export const visionInForce = rule({
  id: "vision-in-force",
  title: "A tester's vision test covers the day of the order",
  basis: personnel,
  kind: "ndt-personnel",
  severity: "note",
  owner: "testing",
  inputs: {
    ...ordered,
    seen: optional(date("visionTest")),
    vision: quantity("profile.nearVisionMonths", "1"),
  },
  *check({ ordered: day, seen, vision }, certificate) {
    const last = seen === undefined ? undefined : addMonths(seen.day, vision.value);
    if (last === undefined || compareDays(day.day, last) > 0)
      yield {
        at: "seen",
        message: `the vision test of tester's certificate ${certificate.name} does not cover ${day.day}, the day of the order`,
        why:
          last === undefined
            ? "no vision test is entered"
            : `vision was tested on ${seen?.day ?? ""}; it holds ${vision.text} months, to ${last}`,
        hint: "add the vision test made since",
      };
  },
  examples: [
    { name: "on the last day", given: { ordered: "2026-06-30", seen: "2025-06-30", vision: "12" }, objections: [] },
    {
      name: "a day later",
      given: { ordered: "2026-07-01", seen: "2025-06-30", vision: "12" },
      objections: ["the vision test of tester's certificate X-01 does not cover 2026-07-01, the day of the order"],
    },
    {
      name: "none entered",
      given: { ordered: "2026-07-01", vision: "12" },
      objections: ["the vision test of tester's certificate X-01 does not cover 2026-07-01, the day of the order"],
    },
  ],
});

import { fromMemory } from "../../model/basis.ts";
import { addMonths, compareDays } from "../../model/dates.ts";
import { anyOf, date, quantity, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const sound = { $: "NP-04", method: "RT", seen: "2025-05-31" };
const looked = (day: string, ...certificates: readonly Readonly<Record<string, string>>[]) => ({
  method: "RT",
  day,
  vision: "12",
  tester: { $: "P07", certificates: certificates.map((one) => ({ ...sound, ...one })) },
});

/** Whoever looks at indications must see them, whether or not his method asks for a certificate. */
export const testerSees = rule({
  id: "tester-sees",
  title: "The vision of whoever tests was tested within the months before",
  basis: fromMemory("ISO 9712 and EN ISO 17637", undefined, "near vision is tested every year, of visual testers too"),
  kind: "ndt-report",
  when: [{ path: "operator.<ndt-personnel:person>", exists: true }],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    method: text("method"),
    day: date("date"),
    vision: quantity("profile.nearVisionMonths", "1"),
    tester: thing("operator", {
      certificates: anyOf(things("<ndt-personnel:person>", { method: text("method"), seen: date("visionTest") })),
    }),
  },
  *check({ method, day, vision, tester }, report) {
    // Eyes are tested once for all methods; a certificate of the method itself is held to what it says.
    const own = tester.certificates.filter((one) => one.method === method);
    const asked = own.length > 0 ? own : tester.certificates;
    const covers = ({ seen }: (typeof asked)[number]) =>
      compareDays(seen.day, day.day) <= 0 && compareDays(day.day, addMonths(seen.day, vision.value)) <= 0;
    if (asked.some(covers)) return;
    yield {
      at: "day",
      on: tester,
      accuses: [],
      message: `the vision test of tester ${tester.$.name} did not cover ${day.day}`,
      why: `${asked.map((one) => `${one.$.name}: vision tested on ${one.seen.day}`).join("; ")}; it holds ${vision.text} months`,
      hint: "add the vision test that covers the day, or have the test repeated",
      related: [{ at: "tester", message: `report ${report.name}` }],
    };
  },
  examples: [
    { name: "on the last day", given: looked("2026-05-31", {}), objections: [] },
    { name: "on the first day", given: looked("2025-05-31", {}), objections: [] },
    { name: "by the test of another method", given: looked("2026-03-10", { method: "UT" }), objections: [] },
    {
      name: "a day late",
      given: looked("2026-06-01", {}),
      objections: ["the vision test of tester P07 did not cover 2026-06-01"],
    },
    {
      name: "tested only afterwards",
      given: looked("2026-03-10", { seen: "2026-03-11" }, { method: "UT" }),
      objections: ["the vision test of tester P07 did not cover 2026-03-10"],
    },
  ],
});

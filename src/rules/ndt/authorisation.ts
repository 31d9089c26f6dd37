import { fromMemory } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, optional, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { certifiedMethod } from "../../requirements/testing-conditions.ts";

export const testerAuthorised = rule({
  id: "tester-authorised",
  title: "A tester was authorised by the employer before the test",
  basis: fromMemory("ISO 9712", undefined, "the employer authorises in writing; a certificate alone does not"),
  kind: "ndt-report",
  when: [certifiedMethod],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    method: text("method"),
    day: date("date"),
    tester: thing("operator", {
      certificates: anyOf(
        things("<ndt-personnel:person>", {
          method: text("method"),
          authorised: optional(date("employerAuthorisation")),
        }),
      ),
    }),
  },
  *check({ method, day, tester }, report) {
    const own = tester.certificates.filter((one) => one.method === method);
    // Who holds no certificate at all is found by another rule.
    if (
      own.length === 0 ||
      own.some(({ authorised }) => authorised === undefined || canPrecede(authorised, day) === "yes")
    )
      return;
    yield {
      at: "day",
      on: tester,
      name: method,
      accuses: [],
      message: `tester ${tester.$.name} was not yet authorised for ${method} on ${day.day}`,
      why: own.map((one) => `${one.$.name}: authorised on ${one.authorised?.day ?? ""}`).join("; "),
      hint: "compare with the authorisation; else have the test repeated",
      related: [{ at: "tester", message: `report ${report.name}` }],
    };
  },
  examples: [
    { name: "on that day", given: authorised("2026-03-10"), objections: [] },
    {
      name: "a day later",
      given: authorised("2026-03-11"),
      objections: ["tester N1 was not yet authorised for RT on 2026-03-10"],
    },
  ],
});

function authorised(day: string) {
  return {
    method: "RT",
    day: "2026-03-10",
    tester: { $: "N1", certificates: [{ $: "NC-1", method: "RT", authorised: day }] },
  };
}

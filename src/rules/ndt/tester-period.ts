import { addMonths, compareDays } from "../../model/dates.ts";
import { date, quantity } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { personnel } from "./testers.ts";

export const testerPeriod = rule({
  id: "tester-certificate-period",
  title: "A tester's certificate runs no longer than the period of validity",
  basis: personnel,
  kind: "ndt-personnel",
  severity: "nonconformity",
  owner: "testing",
  inputs: { from: date("issued"), to: date("validTo"), months: quantity("profile.ndtCertificateMonths", "1") },
  *check({ from, to, months }, certificate) {
    const longest = addMonths(from.day, months.value);
    if (compareDays(to.day, longest) > 0)
      yield {
        at: "to",
        message: `tester's certificate ${certificate.name} is entered as valid to ${to.day}; issued on ${from.day} it can hold to ${longest}`,
        why: `a certificate holds ${months.text} months`,
        hint: "compare with the certificate; a renewal is a record of its own",
      };
  },
  examples: [
    { name: "five years to the day", given: { from: "2025-06-01", to: "2030-06-01", months: "60" }, objections: [] },
    {
      name: "a day more",
      given: { from: "2025-06-01", to: "2030-06-02", months: "60" },
      objections: [
        "tester's certificate X-01 is entered as valid to 2030-06-02; issued on 2025-06-01 it can hold to 2030-06-01",
      ],
    },
  ],
});

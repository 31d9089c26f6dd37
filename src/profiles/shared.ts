import { commonPractice, fromMemory } from "../model/basis.ts";
import type { Difference } from "./family.ts";

/** What families under the Directive have in common. */
export const usual = {
  calibrationMonthsPressureGauge: {
    value: "12",
    basis: commonPractice("twelve months, as the certificate states, for a gauge that is used for tests only"),
  },
  welderRetestMonths: {
    value: "36",
    basis: fromMemory("EN ISO 9606-1", "2017", "revalidation by a new test every three years"),
  },
  valveOpeningsLeast: {
    value: "1",
    basis: commonPractice("the certificate of a new valve states the pressure at which it was found to open"),
  },
  valveReseatStated: {
    value: "not required",
    basis: commonPractice("the certificate of a new valve leaves the closing to its type examination"),
  },
  testingDelayExempt: {
    value: "1.1, 8.1",
    basis: commonPractice("soft steels of group 1.1 and austenitic ones are not feared to crack late"),
  },
  certificateRounding: {
    value: "to the limit's digits",
    basis: fromMemory(
      "EN 10021",
      undefined,
      "a result is rounded to the digits of its limit before it is compared; taken for tensile tests",
    ),
  },
  chartAsSecondGauge: {
    value: "yes",
    basis: commonPractice("a recorder with its chart stands beside one gauge"),
  },
  replacedAreaShare: {
    value: "0",
    basis: fromMemory("EN 13445-3 and EN 12953-3", undefined, "openings are judged by pressure area alone"),
  },
} satisfies Readonly<Record<string, Difference>>;

import { commonPractice } from "../model/basis.ts";
import { compareDays } from "../model/dates.ts";
import { date, list, text, thing } from "../model/input.ts";
import { rule } from "../model/rule.ts";
import { ordered } from "./ordered.ts";

export const calibrationInForce = rule({
  id: "calibration-in-force",
  title: "An instrument is within a calibration on the day of the order",
  basis: commonPractice("measuring equipment is calibrated before use"),
  kind: "instrument",
  severity: "note",
  owner: "quality",
  inputs: {
    ...ordered,
    calibrations: list(
      thing("calibrations[]", {
        certificate: text("certificate"),
        made: date("date"),
        to: date("validTo"),
        left: text("asLeft"),
      }),
    ),
  },
  *check({ ordered: day, calibrations }, instrument) {
    // A later calibration speaks for the instrument, whatever an earlier one still promised.
    const [last] = [...calibrations].sort((a, b) => compareDays(b.made.day, a.made.day));
    if (last !== undefined && compareDays(day.day, last.to.day) <= 0 && last.left === "within limits") return;
    yield {
      at: "calibrations",
      message: `instrument ${instrument.name} is not within a calibration on ${day.day}, the day of the order`,
      why: `the last, ${last?.certificate ?? ""}, is valid to ${last?.to.day ?? ""} and left it ${last?.left ?? ""}`,
      hint: "have it calibrated before it is used, and add the calibration as a further row",
    };
  },
  examples: [
    { name: "on the last day", given: gauge("2026-11-03"), objections: [] },
    {
      name: "a day later",
      given: gauge("2026-11-04"),
      objections: ["instrument X-01 is not within a calibration on 2026-11-04, the day of the order"],
    },
    {
      name: "left outside its limits",
      given: gauge("2026-11-03", "outside limits"),
      objections: ["instrument X-01 is not within a calibration on 2026-11-03, the day of the order"],
    },
  ],
});

function gauge(ordered: string, left = "within limits") {
  return {
    ordered,
    calibrations: [
      { certificate: "C-1", made: "2025-05-10", to: "2026-12-31", left: "within limits" },
      { certificate: "C-2", made: "2025-11-04", to: "2026-11-03", left },
    ],
  };
}

import { commonPractice } from "../../model/basis.ts";
import { addMonths, compareDays } from "../../model/dates.ts";
import { date, quantity, text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const periods: Readonly<Record<string, "gauge" | "recorder" | "thermometer">> = {
  "pressure gauge": "gauge",
  "pressure transmitter": "recorder",
  recorder: "recorder",
  thermometer: "thermometer",
  thermocouple: "thermometer",
};

export const calibrationInterval = rule({
  id: "calibration-interval",
  title: "A calibration is not taken as valid for longer than usual",
  basis: commonPractice("usual intervals between calibrations"),
  kind: "instrument#calibrations",
  severity: "query",
  owner: "quality",
  inputs: {
    type: text("record.type"),
    from: date("date"),
    to: date("validTo"),
    gauge: quantity("profile.calibrationMonthsPressureGauge", "1"),
    recorder: quantity("profile.calibrationMonthsRecorder", "1"),
    thermometer: quantity("profile.calibrationMonthsThermometer", "1"),
    other: quantity("profile.calibrationMonthsOther", "1"),
  },
  *check({ type, from, to, ...months }, calibration) {
    const most = months[periods[type] ?? "other"];
    const longest = addMonths(from.day, most.value);
    if (compareDays(to.day, longest) > 0)
      yield {
        at: "to",
        // A question about the interval throws no doubt on the days themselves.
        accuses: [],
        message: `calibration ${calibration.name} of a ${type} is taken as valid to ${to.day}; ${most.text} months end on ${longest}`,
        why: `calibrated on ${from.day}`,
        hint: "compare with the certificate; if the longer interval is intended, answer this query with its ground",
      };
  },
  examples: [
    { name: "six months of a gauge", given: interval("pressure gauge", "2026-07-10"), objections: [] },
    {
      name: "a day more",
      given: interval("pressure gauge", "2026-07-11"),
      objections: ["calibration X-01 of a pressure gauge is taken as valid to 2026-07-11; 6 months end on 2026-07-10"],
    },
    { name: "twelve months of a calliper", given: interval("calliper", "2027-01-10"), objections: [] },
    {
      name: "a day more of a calliper",
      given: interval("calliper", "2027-01-11"),
      objections: ["calibration X-01 of a calliper is taken as valid to 2027-01-11; 12 months end on 2027-01-10"],
    },
  ],
});

function interval(type: string, to: string) {
  return { type, from: "2026-01-10", to, gauge: "6", recorder: "12", thermometer: "12", other: "12" };
}

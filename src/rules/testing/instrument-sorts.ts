import { commonPractice } from "../../model/basis.ts";
import { text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { knownUnit } from "../../model/units.ts";
import { sizeOf } from "../shared/sizes.ts";

const pressure = ["gauge pressure or stress", "absolute pressure"];
const temperature = ["temperature", "temperature difference"];
const electric = ["voltage", "electrical current"];
const length = ["length"];

/** What each kind of instrument reads, by the names of what units measure. */
const reads: Readonly<Record<string, readonly string[]>> = {
  "pressure gauge": pressure,
  "pressure transmitter": [...pressure, ...electric],
  recorder: [...pressure, ...temperature, ...electric],
  thermometer: temperature,
  thermocouple: [...temperature, "voltage"],
  densitometer: ["pure number"],
  "step tablet": ["pure number"],
  "light meter": ["illuminance"],
  "ultraviolet meter": ["irradiance"],
  "magnetic yoke": ["force"],
  "field meter": ["magnetic field strength"],
  "ultrasonic set": ["sound level difference", "length", "time"],
  "thickness meter": length,
  calliper: length,
  micrometer: length,
  tape: length,
  "weld gauge": length,
  "hardness tester": ["Vickers hardness", "Brinell hardness", "Rockwell hardness"],
  "welding meter": [...electric, "speed"],
  "coating thickness meter": length,
};

export const instrumentSort = rule({
  id: "instrument-sort",
  title: "An instrument is calibrated in what its kind measures",
  basis: commonPractice(
    "a gauge is calibrated in a pressure, a calliper in a length: other units are those of another instrument",
  ),
  kind: "instrument#calibrations",
  when: [
    { path: "uncertainty", exists: true },
    { path: "record.type", equals: Object.keys(reads) },
  ],
  severity: "nonconformity",
  owner: "quality",
  inputs: { type: text("record.type"), uncertainty: text("uncertainty") },
  *check({ type, uncertainty }, calibration) {
    const size = sizeOf(uncertainty);
    const wanted = reads[type];
    if (size === undefined || wanted === undefined) return;
    // A share of the reading fits every kind.
    if (size.unit === "%" || wanted.includes(knownUnit(size.unit).quantity)) return;
    yield {
      at: "uncertainty",
      accuses: [],
      message: `${calibration.name} of a ${type} has an uncertainty of ${uncertainty}, which is no ${wanted.join(" or ")}`,
      why: `${uncertainty}: ${knownUnit(size.unit).quantity}`,
      hint: "compare with the calibration certificate; correct the unit, or what kind of instrument it is",
    };
  },
  examples: [
    { name: "a gauge in bar", given: { type: "pressure gauge", uncertainty: "0.06 bar" }, objections: [] },
    { name: "a share", given: { type: "welding meter", uncertainty: "1 %" }, objections: [] },
    {
      name: "a gauge in millimetres",
      given: { type: "pressure gauge", uncertainty: "0.06 mm" },
      objections: [
        "X-01 of a pressure gauge has an uncertainty of 0.06 mm, which is no gauge pressure or stress or absolute pressure",
      ],
    },
  ],
});

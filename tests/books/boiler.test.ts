import { describe, expect, test } from "vitest";
import type { JudgedBook } from "../../src/model/book.ts";
import { boiler } from "../support/boiler-records.ts";
import type { Change } from "../support/changes.ts";
import { demoBook, judgeChanged, newRoots } from "../support/demo-book.ts";
import { equipment, set } from "../support/steam-receiver.ts";

const judge = (...changes: readonly Change[]): JudgedBook => {
  const { judged, fatal } = judgeChanged(demoBook, [...boiler, ...changes]);
  if (judged === null) throw new Error(`the book could not be read: ${fatal.map(({ message }) => message).join("; ")}`);
  return judged;
};
const base = judge();

const own = new Set([
  "tube-ends-counted",
  "stay-tubes-welded",
  "tube-end-group-accepted",
  "fitting-function-tests-accepted",
  "wall-reduction",
  "water-levels",
  "level-indicator-range",
  "low-water-limiter-level",
  "high-water-limiter-level",
  "pressure-controller-setting",
  "pressure-limiter-setting",
  "limiter-locks",
  "limiter-fails-safe",
  "low-water-limiters-independent",
  "limiters-apart-from-control",
  "gauge-range",
  "gauge-red-mark",
  "feed-pump-duty",
  "burner-heat-input",
  "fitting-pressure",
  "fitting-temperature",
  "tube-end-group-after-order",
  "tube-end-operator-role",
  "tube-end-in-procedure",
  "tube-end-procedure-qualified",
  "tube-end-welder-qualified",
  "tube-end-welder-role",
]);

test("everything about tube ends and fittings is judged, and passed", () => {
  const outcomes = base.outcomes.filter(({ definition }) => own.has(definition));
  const passed = new Set(outcomes.filter(({ verdict }) => verdict === "passed").map(({ definition }) => definition));
  expect([...passed].sort()).toEqual([...own].sort());
  expect(outcomes.filter(({ verdict }) => !["passed", "not applicable"].includes(verdict))).toEqual([]);
});

test("what the register asks for is missed, by name", () => {
  const gaps = base.findings.filter(({ severity }) => severity === "gap").map(({ message }) => message);
  const asked = ["feed-check-valve", "control-panel", "air-vent"];
  for (const sort of asked)
    expect(
      gaps.filter((message) => message.includes(`no fitting with sort ${sort.replaceAll("-", " ")}`)),
      sort,
    ).toHaveLength(1);
  const had = ["pressure-gauge", "low-water-limiter", "water-level-indicator", "gas-train"];
  for (const sort of had)
    expect(
      gaps.filter((message) => message.includes(`with sort ${sort.replaceAll("-", " ")}`)),
      sort,
    ).toEqual([]);
});

const fit = (id: string, at: string, to: unknown): Change => set(`fitting:${id}`, at, to);
const ends = (id: string, at: string, to: unknown): Change => set(`tube-end-group:${id}`, at, to);
const level = (name: string, to: string): Change => set(equipment, `/levels/${name}`, to);

describe("one slip, one finding", () => {
  test.each<[string, readonly Change[], ...string[]]>([
    ["a tube end not counted", [ends("TE-01", "/count", 43)], "tube-ends-counted|part:P90|tubeFields (pass 2) tube"],
    [
      "a drawing that changed",
      [set("part:P90", "/tubeFields/0/stayTubes", 18)],
      "tube-ends-counted|part:P90|tubeFields (pass 2) stay-tube",
    ],
    [
      "a field without tubes",
      [set("part:P90", "/tubeFields/0/tubes", 0)],
      "tube-pull-out|part:P90|tubeFields (pass 2) limit n too low",
    ],
    ["a group without ends", [ends("TE-01", "/count", 0)], "record-schema|tube-end-group:TE-01|count"],
    ["a group rejected", [ends("TE-01", "/result", "rejected")], "tube-end-group-accepted|tube-end-group:TE-01|"],
    [
      "rolled too thin",
      [ends("TE-01", "/measured/0/insideAfter", "45.60 mm"), ends("TE-01", "/measured/0/wallReduction", "18 %")],
      "wall-reduction|tube-end-group:TE-01|measured (row 1, tube 3) ε too high",
    ],
    [
      "hardly rolled",
      [ends("TE-01", "/measured/0/insideAfter", "44.50 mm"), ends("TE-01", "/measured/0/wallReduction", "3 %")],
      "wall-reduction|tube-end-group:TE-01|measured (row 1, tube 3) ε too low",
    ],
    [
      "not rolled to the hole",
      [ends("TE-01", "/measured/0/insideAfter", "44.20 mm")],
      "wall-reduction|tube-end-group:TE-01|measured (row 1, tube 3) refused",
    ],
    [
      "a tube without a wall",
      [ends("TE-01", "/measured/0/insideBefore", "51.00 mm")],
      "wall-reduction|tube-end-group:TE-01|measured (row 1, tube 3) refused",
    ],
    [
      "a reduction recorded without the clearance",
      [ends("TE-01", "/measured/0/wallReduction", "16 %")],
      "wall-reduction|tube-end-group:TE-01|measured (row 1, tube 3) r too high",
    ],
    [
      "limiters below the lowest level",
      [level("lowestPermissible", "1470 mm")],
      "water-levels|equipment:TQ423-01|limiter",
    ],
    ["a normal level above the highest", [level("normal", "1540 mm")], "water-levels|equipment:TQ423-01|highest"],
    [
      "no water over the heated surface",
      [level("highestHeatedSurface", "1400 mm")],
      "water-levels|equipment:TQ423-01|lowest",
    ],
    ["a limiter set too low", [fit("LW-01", "/switchLevel", "1450 mm")], "low-water-limiter-level|fitting:LW-01|"],
    [
      "a limiter that acted too late",
      [fit("LW-01", "/functionTests/0/level", "1455 mm")],
      "low-water-limiter-level|fitting:LW-01|LW-01#cuts the heat",
    ],
    [
      "a high limiter in normal operation",
      [fit("HW-01", "/switchLevel", "1480 mm")],
      "high-water-limiter-level|fitting:HW-01|",
    ],
    [
      "a glass that ends too low",
      [fit("LG-02", "/visibleMaximum", "1520 mm")],
      "level-indicator-range|fitting:LG-02|to",
    ],
    [
      "a controller below the working pressure",
      [fit("PC-01", "/cutOut", "8.5 bar"), fit("PC-01", "/cutIn", "8 bar")],
      "pressure-controller-setting|fitting:PC-01|",
    ],
    [
      "a controller above the limiter",
      [fit("PC-01", "/cutOut", "10.6 bar")],
      "pressure-limiter-setting|fitting:PL-01|controller",
    ],
    [
      "a limiter above the valve",
      [fit("PL-01", "/settingPressure", "11.2 bar")],
      "pressure-limiter-setting|fitting:PL-01|valve",
    ],
    [
      "a limiter tried at the valve",
      [fit("PL-01", "/functionTests/0/pressure", "11.0 bar")],
      "pressure-limiter-setting|fitting:PL-01|PL-01#cuts the heat",
    ],
    ["a limiter that starts again by itself", [fit("LW-02", "/lockOut", false)], "limiter-locks|fitting:LW-02|"],
    [
      "a trial that failed",
      [fit("LW-02", "/functionTests/0/result", "rejected")],
      "fitting-function-tests-accepted|fitting:LW-02|functionTests (cuts the heat)",
    ],
    ["a gauge too short", [fit("PG-01", "/gaugeRange/maximum", "16 bar")], "gauge-range|fitting:PG-01|"],
    ["a gauge too long", [fit("PG-01", "/gaugeRange/maximum", "40 bar")], "gauge-range|fitting:PG-01|"],
    ["a red mark elsewhere", [fit("PG-01", "/redMark", "12 bar")], "gauge-red-mark|fitting:PG-01|"],
    ["a pump too small", [fit("FP-01", "/pumpPoints/0/flow", "1400 kg/h")], "feed-pump-duty|fitting:FP-01|flow"],
    ["a pump without curve", [{ remove: "fitting:FP-01", at: "/pumpPoints" }], "missing|fitting:FP-01|pumpPoints"],
    ["a burner too strong", [fit("BU-01", "/heatInputMost", "950 kW")], "burner-heat-input|fitting:BU-01|"],
    ["a valve for less pressure", [fit("MV-01", "/allowablePressure", "10 bar")], "fitting-pressure|fitting:MV-01|"],
    ["a valve for less heat", [fit("MV-01", "/allowableTemperature", "180 °C")], "fitting-temperature|fitting:MV-01|"],
    [
      "one limiter only",
      [{ remove: "fitting:LW-02" }],
      "missing|equipment:TQ423-01|fitting low-water-limiter at least 2",
    ],
    [
      "no group of stay tubes",
      [{ remove: "tube-end-group:TE-02" }],
      "tube-ends-counted|part:P90|tubeFields (pass 2) stay-tube",
    ],
    [
      "stay tubes expanded only",
      [
        ends("TE-02", "/joining", "expanded"),
        ends("TE-02", "/procedure", "PRC-EXP@1"),
        ends("TE-02", "/measured", [
          {
            position: "1",
            holeDiameter: "51.50 mm",
            tubeOutside: "51.00 mm",
            insideBefore: "38.40 mm",
            insideAfter: "40.00 mm",
          },
        ]),
      ],
      "stay-tubes-welded|tube-end-group:TE-02|",
    ],
    ["welders not named", [{ remove: "tube-end-group:TE-02", at: "/welders" }], "missing|tube-end-group:TE-02|welders"],
    [
      "a welder who is none",
      [ends("TE-02", "/welders", ["S1"])],
      "missing|person:S1|welder-qualification",
      "role-held|person:S1|welder",
    ],
    [
      "expanded before the procedure was approved",
      [ends("TE-01", "/date", "2026-05-05")],
      "procedure-in-force|procedure:PRC-EXP|revisions (1)",
    ],
    [
      "expanded after the pressure test",
      [ends("TE-01", "/date", "2026-06-24")],
      "pressure-test-after-work|pressure-test:HYD-01|",
    ],
    [
      "another steam output on the plate",
      [set("nameplate:NP-01", "/steamOutput", "1300 kg/h")],
      "steam-output-agrees|book|",
    ],
    [
      "another heating surface on the drawing",
      [set("drawing:DRG-01", "/designData/heatingSurface", "43 m²")],
      "heating-surface-agrees|book|",
    ],
  ])("%s", (_, changes, ...keys) => {
    expect(newRoots(judge(...changes), base).map((finding) => finding.key)).toEqual(keys);
  });
});

import type { CalculationInput } from "../../model/calculation.ts";
import { atmosphere } from "./boiler.ts";

/** What the heat balance of a boiler reads: its duty, its pressures, and how far stated figures may lie off. */
export const dutyInputs: Readonly<Record<string, CalculationInput>> = {
  D: { path: "duty.steamOutput", unit: "kg/h", means: "greatest continuous steam output", unsafe: "low" },
  x: { path: "duty.blowdownFraction", unit: "1", means: "continuous blow-down as a share of the output" },
  pw: { path: "duty.workingPressure", unit: "bar", means: "working pressure", display: "p_w" },
  PS: {
    path: "limits.maximumAllowablePressure",
    unit: "bar",
    means: "maximum allowable pressure",
    display: "P_S",
  },
  patm: atmosphere,
  tw: {
    path: "duty.feedwaterTemperature",
    unit: "°C",
    means: "feedwater temperature at full output",
    display: "t_w",
  },
  th: {
    path: "duty.feedwaterTemperatureHighest",
    unit: "°C",
    means: "highest feedwater temperature",
    display: "t_h",
    unsafe: "low",
  },
  B: { path: "duty.heatInput", unit: "kW", means: "greatest heat input of the burner", unsafe: "low" },
  η: { path: "duty.efficiency", unit: "1", means: "efficiency", unsafe: "low" },
  DA: {
    path: "duty.outputFromAndAt",
    unit: "kg/h",
    means: "output stated from and at 100 °C",
    need: "optional",
    display: "D_100,stated",
  },
  kB: {
    path: "profile.burnerExcess",
    unit: "1",
    means: "how far the heat of the burner may exceed that of the declared output",
    display: "k_B",
  },
  kA: {
    path: "profile.fromAndAtTolerance",
    unit: "1",
    means: "how far a stated output from and at 100 °C may lie from the recomputed one",
    display: "k_100",
  },
};

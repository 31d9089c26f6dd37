import type { Change } from "./changes.ts";

export const equipment = "equipment:TQ423-01";
export const valve = "safety-valve:SV-01";
export const set = (record: string, at: string, to: unknown): Change => ({ set: record, at, to });

/** Places outside the calculations where the maximum allowable temperature is stated. */
const restated: readonly Change[] = [
  "design/drawings.json",
  "design/drawings.json",
  "completion/declaration.json",
  "completion/body-certificates.json",
  "completion/body-certificates.json",
  "completion/nameplate.json",
].map((file) => ({
  file,
  find: '"maximumAllowableTemperature": "60 °C"',
  replace: '"maximumAllowableTemperature": "190 °C"',
}));

/** The receiver filled with steam: as little as the calculations for steam need. */
export const steam: readonly Change[] = [
  ...restated,
  set(equipment, "/fluid/state", "steam"),
  set(equipment, "/limits/maximumAllowableTemperature", "190 °C"),
  set(equipment, "/atmosphericPressure", "1.013 bar(a)"),
  set(equipment, "/calculationTemperature", "190 °C"),
  set(equipment, "/requiredFlow", "1400 kg/h"),
  set(equipment, "/duty", {
    steamOutput: "1200 kg/h",
    workingPressure: "9 bar",
    feedwaterTemperature: "105 °C",
    feedwaterTemperatureHighest: "105 °C",
    blowdownFraction: "3 %",
    heatInput: "900 kW",
    efficiency: "90 %",
  }),
  set(valve, "/medium", { name: "steam", state: "steam", temperature: "192 °C" }),
  set(valve, "/certifiedCapacity", "1485 kg/h"),
  set(valve, "/plate/capacity", "1485 kg/h"),
  set("part:P01", "/heating", "convection"),
  set("part:P02", "/heating", "radiation"),
  set("part:P03", "/heating", "none"),
];

import type { CalculationInput, CalculationStep } from "../../model/calculation.ts";
import type { Condition } from "../../model/input.ts";

/** Atmospheric pressure at the site of the equipment, as it turns gauge into absolute pressure. */
export const atmosphere: CalculationInput = {
  path: "atmosphericPressure",
  unit: "bar(a)",
  means: "atmospheric pressure; that of sea level where none is recorded",
  need: "optional",
  otherwise: 1.013,
  display: "p_atm",
};

/** Parts of equipment that holds steam. */
export const ofSteamEquipment: Condition = { path: "book.equipment.fluid.state", equals: "steam" };

/** Roles of parts that hot gas may heat, tubes aside. */
export const heatedRoles: readonly string[] = [
  "shell-course",
  "end",
  "nozzle-neck",
  "manhole",
  "tube-plate",
  "flat-plate",
  "furnace",
  "furnace-hoop",
  "reversal-chamber",
  "access-tube",
  "stay",
];

/** Roles of the tubes through which hot gas flows. */
export const tubeRoles: readonly string[] = ["tube", "stay-tube"];

/** Saturation temperature of the equipment a part belongs to. */
export const boiling: CalculationInput = {
  path: "book.equipment.calculation(saturation).ts",
  unit: "°C",
  means: "saturation temperature at the maximum allowable pressure",
  display: "t_s",
  unsafe: "low",
};

/** Calculation temperature of a part, where its record states one. */
export const statedTemperature: CalculationInput = {
  path: "calculationTemperature",
  unit: "°C",
  means: "calculation temperature the part states",
  need: "optional",
  display: "t_P",
  unsafe: "low",
};

/** The temperature that belongs to the heating of the part, among three that were computed before. */
export const forItsHeating = (swept: string, radiated: string): CalculationStep => ({
  symbol: "t",
  unit: "°C",
  means: "calculation temperature for the heating of the part",
  formula: `byHeating(heating, ts, ${swept}, ${radiated})`,
  round: { decimals: 0, direction: "up" },
});

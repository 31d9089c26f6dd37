import type { Condition } from "../model/input.ts";

/** A fitting of one sort, or of several. */
export const fittingOf = (...sorts: readonly string[]): Condition => ({ path: "sort", equals: sorts });

/** Equipment that holds steam, and a fitting of such equipment. */
export const steamEquipment: Condition = { path: "fluid.state", equals: "steam" };
export const onSteamEquipment: Condition = { path: "equipment.fluid.state", equals: "steam" };

/** Devices that cut the heat for good when a limit is reached. */
export const limiters: readonly string[] = [
  "low-water-limiter",
  "high-water-limiter",
  "pressure-limiter",
  "temperature-limiter",
  "flow-limiter",
];

/** Fittings that water or steam of the boiler fills, at its temperature. */
export const wetFittings: readonly string[] = [
  "water-level-indicator",
  "low-water-limiter",
  "high-water-limiter",
  "level-controller",
  "main-stop-valve",
  "feed-stop-valve",
  "feed-check-valve",
  "blow-down-valve",
  "continuous-blow-down-valve",
  "sampling-point",
  "air-vent",
  "inspection-opening",
];

/** Those, and what hangs on a cooler line: all that bear the pressure of the boiler. */
export const pressureFittings: readonly string[] = [
  ...wetFittings,
  "pressure-gauge",
  "pressure-limiter",
  "pressure-controller",
  "economiser",
];

/** Groups of tube ends by how they are joined. */
export const expandedEnds: Condition = { path: "joining", equals: ["expanded", "expanded-and-welded"] };
export const weldedEnds: Condition = { path: "joining", equals: ["welded", "expanded-and-welded"] };

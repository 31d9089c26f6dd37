import { fromMemory, ownChoice } from "../model/basis.ts";
import { family } from "./family.ts";
import { usual } from "./shared.ts";

const supervised = {
  value: "1",
  basis: fromMemory(
    "ISO 9712",
    undefined,
    "level 1 tests by instruction under the supervision of a level 2 or 3, who judges the results; nothing stricter is remembered of EN 13445-5",
  ),
};

/** Unfired vessels under the Directive. */
export const en13445 = family("ped-en-13445", "Pressure Equipment Directive with EN 13445", {
  ...usual,
  designStandards: { value: "EN 13445", basis: ownChoice("the family this profile states the parameters of") },
  surfaceTesterLevelSupervised: supervised,
  testerLevelSupervised: supervised,
  laterValveExcess: {
    value: "5 %",
    basis: fromMemory("EN 764-7", undefined, "valves after the first up to 5 % above the maximum allowable pressure"),
  },
});

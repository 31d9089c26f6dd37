import type { Condition } from "../model/input.ts";

/** Conditions that a rule shares with the row of the register that owes what it reads. */

/** A certificate row of steel that was melted and tested, not of a bought assembly. */
export const tested: Condition = {
  path: "form",
  equals: ["plate", "tube", "pipe", "forging", "bar", "section", "formed-end", "fitting"],
};

export const pressureBearing: Condition = { path: "pressureBearing", equals: true };

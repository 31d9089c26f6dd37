import { directive, owed, role, sheet } from "./row.ts";

export const results = directive("Annex III, results of design calculations");

/** Rows of several registers: courses and dished ends are calculated alike in all. */
export const shellCalculation = owed(
  "shell-calculation",
  "A calculation of each shell course",
  { kind: "part", when: [role("shell-course")] },
  sheet("cylindrical-shell"),
  "design-approved",
  "design",
  results,
);
export const endCalculation = owed(
  "end-calculation",
  "A calculation of each end",
  { kind: "part", when: [role("end")] },
  sheet("torispherical-end"),
  "design-approved",
  "design",
  results,
);

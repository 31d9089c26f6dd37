import { commonPractice } from "../../model/basis.ts";

/** Who answers for the course of a nonconformity, and what it goes by. */
export const nonconformityCourse = {
  owner: "quality",
  basis: commonPractice("a nonconformity is found, decided on, corrected, checked and closed, in this order"),
} as const;

/** Dispositions that end with the item set right. */
export const correctedBy: readonly string[] = ["rework", "repair"];

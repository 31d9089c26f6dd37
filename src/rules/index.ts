// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../model/rule.ts";
import { coatingRules } from "./coating/index.ts";
import { designRules } from "./design/index.ts";
import { heatTreatmentRules } from "./heat-treatment/index.ts";
import { materialsRules } from "./materials/index.ts";
import { ndtRules } from "./ndt/index.ts";
import { papersRules } from "./papers/index.ts";
import { safetyRules } from "./safety/index.ts";
import { testingRules } from "./testing/index.ts";
import { tubesRules } from "./tubes/index.ts";
import { weldingRules } from "./welding/index.ts";
import { weldingRangeRules } from "./welding-range/index.ts";

/** Every shipped rule, by trade. */
export const rules: readonly Rule[] = [
  ...coatingRules,
  ...designRules,
  ...heatTreatmentRules,
  ...materialsRules,
  ...ndtRules,
  ...papersRules,
  ...safetyRules,
  ...testingRules,
  ...tubesRules,
  ...weldingRules,
  ...weldingRangeRules,
];

// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { heatTreatmentChart } from "./chart.ts";
import { heatTreatmentPlanned, treatedAsPlanned, heatTreatmentAfterWelding, heatTreatmentTimes } from "./cycles.ts";
import { formedEndTreated, rolledPartTreated } from "./formed.ts";
import { heatTreatmentHeld } from "./held.ts";
import { heatTreatmentLoad } from "./load.ts";
import { normalisedInAir } from "./normalised.ts";
import { heatTreatmentRates } from "./rates.ts";
import { heatTreatmentSpan } from "./span.ts";

/** What rules/ has of heat treatment. */
export const heatTreatmentRules: readonly Rule[] = [
  heatTreatmentChart,
  heatTreatmentPlanned,
  treatedAsPlanned,
  heatTreatmentAfterWelding,
  heatTreatmentTimes,
  formedEndTreated,
  rolledPartTreated,
  heatTreatmentHeld,
  heatTreatmentLoad,
  normalisedInAir,
  heatTreatmentRates,
  heatTreatmentSpan,
];

// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { controlSpans } from "./control-spans.ts";
import { pumpCurve } from "./feed-pump-curve.ts";
import { feedPumpDuty } from "./feed-pump.ts";
import { fittingCertified, fittingCertifiedFirst, fittingDeclared, limiterTemperature } from "./fitting-papers.ts";
import { fittingSize, fittingRating } from "./fitting-sizes.ts";
import { fittingPressure, fittingTemperature, limiterLocks, limiterFailsSafe, burnerHeatInput } from "./fittings.ts";
import { gaugeFromNothing, gaugeClass } from "./gauge-dial.ts";
import { indicatorsApart, indicatorConnections, limiterWatchesItself } from "./level-connections.ts";
import { lowLimiterLevel, highLimiterLevel } from "./level-fittings.ts";
import { indicatorRange } from "./level-indicator.ts";
import { lowLimitersIndependent, limitersApartFromControl } from "./limiter-independence.ts";
import { gaugeRange, gaugeRedMark } from "./pressure-gauge.ts";
import { controllerPressure, limiterPressure } from "./pressure-settings.ts";
import { valveBench, valveReseat, valveReseatStated, valveReadings } from "./safety-valve-bench.ts";
import { valvePapers } from "./safety-valve-papers.ts";
import { valveSetPressure, valvePlate, valveArea, valveCategory } from "./safety-valve.ts";
import { valveInletLoss, valveLift } from "./valve-passage.ts";
import { valveSize, valveBody, valveMedium, benchMedium } from "./valve-plate.ts";
import { waterLevels } from "./water-levels.ts";

/** What rules/ has of safety. */
export const safetyRules: readonly Rule[] = [
  ...controlSpans,
  pumpCurve,
  feedPumpDuty,
  fittingCertified,
  fittingCertifiedFirst,
  fittingDeclared,
  limiterTemperature,
  fittingSize,
  fittingRating,
  fittingPressure,
  fittingTemperature,
  limiterLocks,
  limiterFailsSafe,
  burnerHeatInput,
  gaugeFromNothing,
  gaugeClass,
  indicatorsApart,
  indicatorConnections,
  limiterWatchesItself,
  lowLimiterLevel,
  highLimiterLevel,
  indicatorRange,
  lowLimitersIndependent,
  limitersApartFromControl,
  gaugeRange,
  gaugeRedMark,
  controllerPressure,
  limiterPressure,
  valveBench,
  valveReseat,
  valveReseatStated,
  valveReadings,
  ...valvePapers,
  valveSetPressure,
  valvePlate,
  valveArea,
  valveCategory,
  valveInletLoss,
  valveLift,
  valveSize,
  valveBody,
  valveMedium,
  benchMedium,
  waterLevels,
];

// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Calculation } from "../model/calculation.ts";
import { accessTube } from "./access-tube.ts";
import { breathingSpace } from "./breathing-space.ts";
import { carbonEquivalent } from "./carbon-equivalent.ts";
import { cylindricalShell } from "./cylindrical-shell.ts";
import { designStress } from "./design-stress.ts";
import { equipmentCategory, heatedEquipmentCategory } from "./equipment-category.ts";
import { furnaceTest, chamberTest, accessTubeTest } from "./external-test.ts";
import { flatPlate } from "./flat-plate.ts";
import { furnaceHoop } from "./furnace-hoop.ts";
import { furnace } from "./furnace.ts";
import { gasSafetyValve } from "./gas-safety-valve.ts";
import { heatBalance } from "./heat-balance.ts";
import { heatInput } from "./heat-input.ts";
import { holdDrift } from "./hold-drift.ts";
import { imageQuality } from "./image-quality.ts";
import { metalTemperature } from "./metal-temperature.ts";
import { nozzleNeck } from "./nozzle-neck.ts";
import { openingSpacing } from "./opening-spacing.ts";
import { pressureHold } from "./pressure-hold.ts";
import { reliefCapacity } from "./relief-capacity.ts";
import { reversalChamber } from "./reversal-chamber.ts";
import { saturation } from "./saturation.ts";
import { shellOpening } from "./shell-opening.ts";
import { smokeTube } from "./smoke-tube.ts";
import { sourceDistance } from "./source-distance.ts";
import { stayTube } from "./stay-tube.ts";
import { stay } from "./stay.ts";
import { stayedFlatPlate } from "./stayed-flat-plate.ts";
import { steamRelief } from "./steam-relief.ts";
import { steamSafetyValve } from "./steam-safety-valve.ts";
import { testLimits } from "./test-limits.ts";
import { testPressure } from "./test-pressure.ts";
import { testStress } from "./test-stress.ts";
import { testedLength } from "./tested-length.ts";
import { torisphericalEnd } from "./torispherical-end.ts";
import { tubeHole } from "./tube-hole.ts";
import { tubeNest } from "./tube-nest.ts";
import { tubePullOut } from "./tube-pull-out.ts";
import { tubeTemperature } from "./tube-temperature.ts";
import { unreinforcedOpening } from "./unreinforced-opening.ts";
import { valveSettings, valveBenchLimits } from "./valve-limits.ts";
import { wallReduction } from "./wall-reduction.ts";

/** Every calculation. */
export const calculations: readonly Calculation[] = [
  accessTube,
  breathingSpace,
  carbonEquivalent,
  cylindricalShell,
  designStress,
  equipmentCategory,
  heatedEquipmentCategory,
  furnaceTest,
  chamberTest,
  accessTubeTest,
  flatPlate,
  furnaceHoop,
  furnace,
  gasSafetyValve,
  heatBalance,
  heatInput,
  holdDrift,
  imageQuality,
  metalTemperature,
  nozzleNeck,
  openingSpacing,
  pressureHold,
  reliefCapacity,
  reversalChamber,
  saturation,
  shellOpening,
  smokeTube,
  sourceDistance,
  stayTube,
  stay,
  stayedFlatPlate,
  steamRelief,
  steamSafetyValve,
  testLimits,
  testPressure,
  testStress,
  testedLength,
  torisphericalEnd,
  tubeHole,
  tubeNest,
  tubePullOut,
  tubeTemperature,
  unreinforcedOpening,
  valveSettings,
  valveBenchLimits,
  wallReduction,
];

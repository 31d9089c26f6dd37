import { accessTube } from "./access-tube.ts";
import { breathingSpace } from "./breathing-space.ts";
import { accessTubeTest, chamberTest, furnaceTest } from "./external-test.ts";
import { carbonEquivalent } from "./carbon-equivalent.ts";
import { cylindricalShell } from "./cylindrical-shell.ts";
import { designStress } from "./design-stress.ts";
import { equipmentCategory, heatedEquipmentCategory } from "./equipment-category.ts";
import { furnaceHoop } from "./furnace-hoop.ts";
import { furnace } from "./furnace.ts";
import { flatPlate } from "./flat-plate.ts";
import { gasSafetyValve } from "./gas-safety-valve.ts";
import { heatBalance } from "./heat-balance.ts";
import { heatInput } from "./heat-input.ts";
import { holdDrift } from "./hold-drift.ts";
import { imageQuality } from "./image-quality.ts";
import { metalTemperature } from "./metal-temperature.ts";
import { pressureHold } from "./pressure-hold.ts";
import { reliefCapacity } from "./relief-capacity.ts";
import { saturation } from "./saturation.ts";
import { steamRelief } from "./steam-relief.ts";
import { steamSafetyValve } from "./steam-safety-valve.ts";
import { testLimits } from "./test-limits.ts";
import { testPressure } from "./test-pressure.ts";
import { testedLength } from "./tested-length.ts";
import { testStress } from "./test-stress.ts";
import { torisphericalEnd } from "./torispherical-end.ts";
import { tubeTemperature } from "./tube-temperature.ts";
import { reversalChamber } from "./reversal-chamber.ts";
import { smokeTube } from "./smoke-tube.ts";
import { tubePullOut } from "./tube-pull-out.ts";
import { openingSpacing } from "./opening-spacing.ts";
import { shellOpening } from "./shell-opening.ts";
import { stay } from "./stay.ts";
import { stayTube } from "./stay-tube.ts";
import { stayedFlatPlate } from "./stayed-flat-plate.ts";
import { tubeHole } from "./tube-hole.ts";
import { tubeNest } from "./tube-nest.ts";
import { unreinforcedOpening } from "./unreinforced-opening.ts";
import { valveBenchLimits, valveSettings } from "./valve-limits.ts";
import { wallReduction } from "./wall-reduction.ts";
import type { Calculation } from "../model/calculation.ts";

/** Every calculation. A test holds this list against the files of this folder. */
export const calculations: readonly Calculation[] = [
  saturation,
  metalTemperature,
  tubeTemperature,
  designStress,
  cylindricalShell,
  torisphericalEnd,
  furnace,
  furnaceHoop,
  reversalChamber,
  accessTube,
  smokeTube,
  tubePullOut,
  wallReduction,
  shellOpening,
  unreinforcedOpening,
  openingSpacing,
  tubeHole,
  tubeNest,
  stayedFlatPlate,
  flatPlate,
  breathingSpace,
  stay,
  stayTube,
  testPressure,
  testLimits,
  testStress,
  furnaceTest,
  chamberTest,
  accessTubeTest,
  pressureHold,
  holdDrift,
  testedLength,
  imageQuality,
  valveSettings,
  valveBenchLimits,
  gasSafetyValve,
  reliefCapacity,
  heatBalance,
  steamSafetyValve,
  steamRelief,
  carbonEquivalent,
  equipmentCategory,
  heatedEquipmentCategory,
  heatInput,
];

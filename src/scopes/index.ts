// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Scope } from "../model/scope.ts";
import { fired } from "./fired.ts";
import { gas } from "./gas.ts";
import { general } from "./general.ts";
import { pressureEquipment } from "./pressure-equipment.ts";
import { shellBoilers } from "./shell-boilers.ts";
import { steam } from "./steam.ts";
import { tubeNests } from "./tube-nests.ts";
import { unfiredVessels } from "./unfired-vessels.ts";

/** What definitions belong to, and registers are made of. */
export const scopes: readonly Scope[] = [
  fired,
  gas,
  general,
  pressureEquipment,
  shellBoilers,
  steam,
  tubeNests,
  unfiredVessels,
];

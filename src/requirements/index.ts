import type { Register } from "../model/requirement.ts";
import { shellBoiler } from "./shell-boiler.ts";
import { unfiredVessel } from "./unfired-vessel.ts";

export const registers: readonly Register[] = [unfiredVessel, shellBoiler];

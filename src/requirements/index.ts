import type { Register } from "../model/requirement.ts";
import { unfiredVessel } from "./unfired-vessel.ts";

export const registers: readonly Register[] = [unfiredVessel];

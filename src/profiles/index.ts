import { cautious } from "./cautious.ts";
import type { Profile } from "../model/profile.ts";

/** Every shipped profile. A book names one, and may override single parameters. */
export const profiles: readonly Profile[] = [cautious];

import type { Profile } from "../model/profile.ts";
import { cautious } from "./cautious.ts";
import { en12953 } from "./en-12953.ts";
import { en13445 } from "./en-13445.ts";
import { indian } from "./indian.ts";

/** Every shipped profile: one for each family of standards, the cautious one first. A book names one, and may override single parameters. */
export const profiles: readonly Profile[] = [cautious, en12953, en13445, indian];

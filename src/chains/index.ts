// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Chain } from "../model/chain.ts";
import { joint } from "./joint.ts";
import { part } from "./part.ts";
import { tubeEndGroup } from "./tube-end-group.ts";

/** The walks an inspector takes, kind by kind. A kind without one gets a chain of what it names and what it owes. */
export const chains: readonly Chain[] = [joint, part, tubeEndGroup];

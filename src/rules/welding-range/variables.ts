import { heatVariables } from "./variables-of-heat.ts";
import { methodVariables } from "./variables-of-method.ts";
import { partVariables } from "./variables-of-parts.ts";
import type { Variable } from "./variable.ts";

/** The variables of a weld, as EN ISO 15614-1 lists them, with how each neighbour states them. */
export const variables: readonly Variable[] = [...methodVariables, ...partVariables, ...heatVariables];

import { linkRules } from "../link/graph.ts";
import { sheetRules } from "../compute/sheets.ts";
import type { BuiltIn } from "../model/definitions.ts";
import { comparisonRules } from "./comparisons.ts";
import { dayRules } from "./days.ts";
import { exceptionRules } from "./exceptions.ts";
import { fieldRules } from "./fields.ts";
import { gapRules } from "./gap-finding.ts";
import { historyRules } from "./history.ts";
import { milestoneRules } from "./milestones.ts";
import { originalRules } from "./originals.ts";
import { onePaperRules } from "./one-paper.ts";
import { orphanRules } from "./orphans.ts";
import { profileRules } from "../reading/profile.ts";
import { readBackRules } from "./read-back.ts";
import { reasonRules } from "../reading/reasons.ts";
import { scopeRules } from "./in-force.ts";
import { registerRules } from "./register.ts";
import { tableRules } from "../reading/tables.ts";
import { verifiedRules } from "./verified.ts";

/** Checks that are built into linking and judging; those of reading files are listed by the loader. */
export const builtInRules: readonly BuiltIn[] = [
  ...linkRules,
  ...fieldRules,
  ...originalRules,
  ...onePaperRules,
  ...comparisonRules,
  ...exceptionRules,
  ...profileRules,
  ...registerRules,
  ...scopeRules,
  ...tableRules,
  ...milestoneRules,
  ...historyRules,
  ...gapRules,
  ...reasonRules,
  ...readBackRules,
  ...dayRules,
  ...sheetRules,
  ...orphanRules,
  ...verifiedRules,
];

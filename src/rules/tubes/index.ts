// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { tubeEndInProcedure, tubeEndProcedureQualified } from "./procedures.ts";
import { tubeEndProjection } from "./projection.ts";
import { tubeEndsCounted, stayTubesWelded, reductionAsked } from "./tube-ends.ts";
import { tubesLast } from "./tubes-last.ts";
import { tubeEndWelderQualified } from "./welders.ts";

/** What rules/ has of tubes. */
export const tubesRules: readonly Rule[] = [
  tubeEndInProcedure,
  tubeEndProcedureQualified,
  tubeEndProjection,
  tubeEndsCounted,
  stayTubesWelded,
  reductionAsked,
  tubesLast,
  tubeEndWelderQualified,
];

import { arcEfficiency } from "./arc-welding.ts";
import {
  gradeChemistry,
  gradeElongation,
  gradeGroup,
  gradeImpact,
  gradeProofStrength,
  gradeStrength,
} from "./grades.ts";
import { wiresDoubleWallFilm, wiresDoubleWallSource, wiresSingleWall } from "./image-quality.ts";
import type { Table } from "../model/table.ts";

/** Every shipped table of a standard. */
export const tables: readonly Table[] = [
  gradeStrength,
  gradeElongation,
  gradeProofStrength,
  gradeChemistry,
  gradeImpact,
  gradeGroup,
  arcEfficiency,
  wiresSingleWall,
  wiresDoubleWallFilm,
  wiresDoubleWallSource,
];

// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Table } from "../model/table.ts";
import { arcEfficiency } from "./arc-welding.ts";
import {
  gradeStrength,
  gradeElongation,
  gradeProofStrength,
  gradeChemistry,
  gradeImpact,
  gradeGroup,
} from "./grades.ts";
import { wiresSingleWall, wiresDoubleWallFilm, wiresDoubleWallSource } from "./image-quality.ts";

/** Every shipped table of a standard. */
export const tables: readonly Table[] = [
  arcEfficiency,
  gradeStrength,
  gradeElongation,
  gradeProofStrength,
  gradeChemistry,
  gradeImpact,
  gradeGroup,
  wiresSingleWall,
  wiresDoubleWallFilm,
  wiresDoubleWallSource,
];

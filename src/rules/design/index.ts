// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { calculationPressureCovers, calculationTemperatureCovers, allowanceOfPart } from "./calculation-figures.ts";
import {
  moduleFitsCategory,
  noModuleWithoutCategory,
  declarationBodyNumber,
  declarationCertificates,
} from "./conformity-assessment.ts";
import { designStandardServed, sheetStandardDeclared, sheetEditionDeclared } from "./design-standards.ts";
import { dimensionWithin } from "./dimensions.ts";
import { emptyMass } from "./empty-mass.ts";
import { fluidGroup } from "./fluid-group.ts";
import { heatingSurfaceOfParts } from "./heated-parts.ts";
import { jointRoleOfParts, jointBearsPressure, partForm } from "./joint-parts.ts";
import { measuredAlike } from "./measured-thickness.ts";
import { dimensionRows } from "./nominals.ts";
import { openingJudged } from "./openings.ts";
import { pressureCycles, vacuumAsked } from "./operation.ts";
import { shapeMeasured } from "./shape-measured.ts";
import { sectionRound, peakingPermitted, offsetMeasured } from "./shape.ts";
import { seamsStaggered } from "./stagger.ts";
import { measuredAtStations } from "./stations.ts";
import { weldCoefficientExtent } from "./weld-coefficient.ts";

/** What rules/ has of design. */
export const designRules: readonly Rule[] = [
  calculationPressureCovers,
  calculationTemperatureCovers,
  allowanceOfPart,
  moduleFitsCategory,
  noModuleWithoutCategory,
  declarationBodyNumber,
  declarationCertificates,
  designStandardServed,
  sheetStandardDeclared,
  sheetEditionDeclared,
  dimensionWithin,
  emptyMass,
  fluidGroup,
  heatingSurfaceOfParts,
  jointRoleOfParts,
  jointBearsPressure,
  partForm,
  measuredAlike,
  ...dimensionRows,
  openingJudged,
  pressureCycles,
  vacuumAsked,
  ...shapeMeasured,
  sectionRound,
  peakingPermitted,
  offsetMeasured,
  seamsStaggered,
  measuredAtStations,
  weldCoefficientExtent,
];

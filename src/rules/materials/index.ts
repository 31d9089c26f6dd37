// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { alloyAsNamed } from "./alloy-name.ts";
import { alloyAsPart, alloyAsCertificate, alloyBeyondMethod } from "./alloy.ts";
import { developedAreas } from "./areas.ts";
import { boltSection } from "./bolting.ts";
import { chemistryLimits } from "./chemistry.ts";
import { materialDates } from "./dates.ts";
import { deliveryCondition } from "./delivery.ts";
import { documentsOfMaterial } from "./documents.ts";
import { certificateFigures } from "./figures.ts";
import { oneHeatOneAnalysis } from "./heats.ts";
import { markMaterial, certificateType, certificateThickness, millApproved } from "./identity.ts";
import { printedMean, impactEnergy } from "./impact.ts";
import { documentStandard, testUnitOfHeat } from "./inspection-document.ts";
import { millApprovals } from "./mills.ts";
import { plateCut, lengthCut } from "./pieces-cut.ts";
import { piecesOfPart, piecesDelivered, lengthsOfParts, lengthOfPart } from "./pieces.ts";
import { plateRoom, barWithinProduct } from "./plate-room.ts";
import { productAnalysis } from "./product-analysis.ts";
import { rowMass } from "./row-mass.ts";
import { certifiedSizes } from "./sizes.ts";
import { tensileLimits } from "./strength.ts";
import { yieldKind, gaugeLengthProportional, hardnessAsStrength } from "./tensile-figures.ts";
import { impactTested } from "./tests-owed.ts";
import { transferFrom, markInFurnace } from "./transfers.ts";
import { certifiedAfterTreatment, validatedIndependently } from "./treated-after.ts";
import { tubeTightness } from "./tube-tests.ts";

/** What rules/ has of materials. */
export const materialsRules: readonly Rule[] = [
  alloyAsNamed,
  alloyAsPart,
  alloyAsCertificate,
  alloyBeyondMethod,
  ...developedAreas,
  boltSection,
  chemistryLimits,
  ...materialDates,
  deliveryCondition,
  ...documentsOfMaterial,
  ...certificateFigures,
  oneHeatOneAnalysis,
  markMaterial,
  certificateType,
  certificateThickness,
  millApproved,
  printedMean,
  impactEnergy,
  documentStandard,
  testUnitOfHeat,
  ...millApprovals,
  plateCut,
  lengthCut,
  piecesOfPart,
  piecesDelivered,
  lengthsOfParts,
  lengthOfPart,
  plateRoom,
  barWithinProduct,
  productAnalysis,
  ...rowMass,
  ...certifiedSizes,
  tensileLimits,
  yieldKind,
  gaugeLengthProportional,
  hardnessAsStrength,
  impactTested,
  transferFrom,
  markInFurnace,
  certifiedAfterTreatment,
  validatedIndependently,
  tubeTightness,
];

/** Every rule, in the order in which findings are told: what is missing, what cannot be, what to mind. */
import { aboveCross } from './aboveCross.ts';
import { addsDiffer } from './addsDiffer.ts';
import { asWorn } from './asWorn.ts';
import { balanceLens } from './balanceLens.ts';
import { baseCurvePair } from './baseCurvePair.ts';
import { blankTooSmall } from './blankTooSmall.ts';
import { colourFringes } from './colourFringes.ts';
import { decentration } from './decentration.ts';
import { declaredLimit } from './declaredLimit.ts';
import { designRange } from './designRange.ts';
import { edgeBeyondRim } from './edgeBeyondRim.ts';
import { edgeTooThick } from './edgeTooThick.ts';
import { faceForm } from './faceForm.ts';
import { fitInPerson } from './fitInPerson.ts';
import { fittingHeight } from './fittingHeight.ts';
import { frameCombination } from './frameCombination.ts';
import { frameCurve } from './frameCurve.ts';
import { heavyPair } from './heavyPair.ts';
import { heightAssumed } from './heightAssumed.ts';
import { impactResistance } from './impactResistance.ts';
import { lensRefused } from './lensRefused.ts';
import { lensTooThin } from './lensTooThin.ts';
import { materialRange } from './materialRange.ts';
import { measurementMissing } from './measurementMissing.ts';
import { measurementOutsideLens } from './measurementOutsideLens.ts';
import { mirrorCoating } from './mirrorCoating.ts';
import { monovision } from './monovision.ts';
import { mountingMaterial } from './mountingMaterial.ts';
import { notForDriving } from './notForDriving.ts';
import { notOffered } from './notOffered.ts';
import { outlineEstimate } from './outlineEstimate.ts';
import { pdHalved } from './pdHalved.ts';
import { pdSensitivity } from './pdSensitivity.ts';
import { photochromicConditions } from './photochromicConditions.ts';
import { polarisedScreens } from './polarisedScreens.ts';
import { prescriptionIncomplete } from './prescriptionIncomplete.ts';
import { prescriptionValidity } from './prescriptionValidity.ts';
import { readingZoneCut } from './readingZoneCut.ts';
import type { Rule } from './rule.ts';
import { segmentCut } from './segmentCut.ts';
import { segmentHeight } from './segmentHeight.ts';
import { sharpView } from './sharpView.ts';
import { singleVisionWithAdd } from './singleVisionWithAdd.ts';
import { stairs } from './stairs.ts';
import { thicknessEstimate } from './thicknessEstimate.ts';
import { tintDriving } from './tintDriving.ts';
import { uncoatedHighIndex } from './uncoatedHighIndex.ts';
import { useNotServed } from './useNotServed.ts';
import { vertexDistance } from './vertexDistance.ts';
import { verticalImbalance } from './verticalImbalance.ts';
import { whoMeasured } from './whoMeasured.ts';

export const RULES: readonly Rule[] = [
  prescriptionIncomplete,
  prescriptionValidity,
  measurementMissing,
  measurementOutsideLens,
  useNotServed,
  notOffered,
  declaredLimit,
  frameCombination,
  mirrorCoating,
  mountingMaterial,
  impactResistance,
  designRange,
  materialRange,
  fittingHeight,
  aboveCross,
  readingZoneCut,
  segmentHeight,
  segmentCut,
  faceForm,
  lensRefused,
  blankTooSmall,
  lensTooThin,
  edgeTooThick,
  addsDiffer,
  monovision,
  balanceLens,
  fitInPerson,
  verticalImbalance,
  vertexDistance,
  asWorn,
  baseCurvePair,
  frameCurve,
  decentration,
  edgeBeyondRim,
  heavyPair,
  tintDriving,
  polarisedScreens,
  photochromicConditions,
  sharpView,
  colourFringes,
  uncoatedHighIndex,
  singleVisionWithAdd,
  notForDriving,
  stairs,
  whoMeasured,
  heightAssumed,
  pdHalved,
  pdSensitivity,
  outlineEstimate,
  thicknessEstimate,
];

/** The rules that a verdict can rest on: those that never say more than a note are slow, and left out. */
export const DECIDING_RULES: readonly Rule[] = RULES.filter(({ notesOnly }) => !notesOnly);

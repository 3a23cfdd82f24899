import { addressRepeated } from "./addressRepeated.ts";
import { anchorStrengthUnknown } from "./anchorStrengthUnknown.ts";
import { asBuiltRules } from "./asBuiltRules.ts";
import { builtBond } from "./builtBond.ts";
import { builtHouseTag } from "./builtHouseTag.ts";
import { builtLight } from "./builtLight.ts";
import { builtMarks } from "./builtMarks.ts";
import { builtOffset } from "./builtOffset.ts";
import { builtPort } from "./builtPort.ts";
import { builtSlack } from "./builtSlack.ts";
import { cableLongerThanReel } from "./cableLongerThanReel.ts";
import { cablePathBroken } from "./cablePathBroken.ts";
import { clearanceSetIncomplete } from "./clearanceSetIncomplete.ts";
import { coilAwayFromTerminal } from "./coilAwayFromTerminal.ts";
import { coilOfAnotherCable } from "./coilOfAnotherCable.ts";
import { coilTooShort } from "./coilTooShort.ts";
import { coilWithoutTerminal } from "./coilWithoutTerminal.ts";
import { communicationSeparationAtPole } from "./communicationSeparationAtPole.ts";
import { communicationSeparationInSpan } from "./communicationSeparationInSpan.ts";
import { crossingClearance } from "./crossingClearance.ts";
import { crossingClearanceUnknown } from "./crossingClearanceUnknown.ts";
import { crossingWithoutLimit } from "./crossingWithoutLimit.ts";
import { deadLengthReused } from "./deadLengthReused.ts";
import { dropClearance } from "./dropClearance.ts";
import { dropClearanceUnknown } from "./dropClearanceUnknown.ts";
import { dropOverForbidden } from "./dropOverForbidden.ts";
import { dropOverReach } from "./dropOverReach.ts";
import { dropsCross } from "./dropsCross.ts";
import { extremeLoadMissing } from "./extremeLoadMissing.ts";
import { feedMissing } from "./feedMissing.ts";
import { feedOverSplit } from "./feedOverSplit.ts";
import { fiberBeyondCable } from "./fiberBeyondCable.ts";
import { fiberBroken } from "./fiberBroken.ts";
import { fiberCutUpstream } from "./fiberCutUpstream.ts";
import { fiberUsedTwice } from "./fiberUsedTwice.ts";
import { groundClearance } from "./groundClearance.ts";
import { groundMissing } from "./groundMissing.ts";
import { guyMissing } from "./guyMissing.ts";
import { guyOverloaded } from "./guyOverloaded.ts";
import { guysCrowdClimbingSpace } from "./guysCrowdClimbingSpace.ts";
import { hangingOverlap } from "./hangingOverlap.ts";
import { lateralNotSpliced } from "./lateralNotSpliced.ts";
import { lightDifferential } from "./lightDifferential.ts";
import { lightTooStrong } from "./lightTooStrong.ts";
import { lightTooWeak } from "./lightTooWeak.ts";
import { outsideUsableSpace } from "./outsideUsableSpace.ts";
import { ownStrandsTooNear } from "./ownStrandsTooNear.ts";
import { poleTagRepeated } from "./poleTagRepeated.ts";
import { poleWithoutSpan } from "./poleWithoutSpan.ts";
import { portBeyondModel } from "./portBeyondModel.ts";
import { portUsedTwice } from "./portUsedTwice.ts";
import { portWithoutLight } from "./portWithoutLight.ts";
import { pullDifference } from "./pullDifference.ts";
import { reachOverClass } from "./reachOverClass.ts";
import { readingAstray } from "./readingAstray.ts";
import { readingUndrawn } from "./readingUndrawn.ts";
import { riserBracketTooLow } from "./riserBracketTooLow.ts";
import type { Rule } from "./rule.ts";
import { sagBesideNeighbour } from "./sagBesideNeighbour.ts";
import { spanInferred } from "./spanInferred.ts";
import { spanLengthDiffers } from "./spanLengthDiffers.ts";
import { spanOverLongest } from "./spanOverLongest.ts";
import { spanRepeated } from "./spanRepeated.ts";
import { spanSagUnknown } from "./spanSagUnknown.ts";
import { spanUnstrung } from "./spanUnstrung.ts";
import { spanWithoutStrand } from "./spanWithoutStrand.ts";
import { spareFibersInTube } from "./spareFibersInTube.ts";
import { sparePorts } from "./sparePorts.ts";
import { splitOverClass } from "./splitOverClass.ts";
import { splitterFedTwice } from "./splitterFedTwice.ts";
import { splitterWithoutFiber } from "./splitterWithoutFiber.ts";
import { strandOfSpanUnknown } from "./strandOfSpanUnknown.ts";
import { strandTension } from "./strandTension.ts";
import { streetLightSeparation } from "./streetLightSeparation.ts";
import { strengthSetIncomplete } from "./strengthSetIncomplete.ts";
import { structureClearance } from "./structureClearance.ts";
import { structureSwept } from "./structureSwept.ts";
import { structureWithoutLimit } from "./structureWithoutLimit.ts";
import { supplySeparationAtPole } from "./supplySeparationAtPole.ts";
import { supplySeparationInSpan } from "./supplySeparationInSpan.ts";
import { supplyVoltageOverLimit } from "./supplyVoltageOverLimit.ts";
import { terminalInClimbingSpace } from "./terminalInClimbingSpace.ts";
import { terminalNameRepeated } from "./terminalNameRepeated.ts";
import { terminalNotAllowed } from "./terminalNotAllowed.ts";
import { terminalOffCable } from "./terminalOffCable.ts";
import { terminalPastSpan } from "./terminalPastSpan.ts";
import { terminalSpanTooShort } from "./terminalSpanTooShort.ts";
import { terminalStandoff } from "./terminalStandoff.ts";
import { terminalTwoTubes } from "./terminalTwoTubes.ts";
import { terminalWithoutCoil } from "./terminalWithoutCoil.ts";
import { traceEventMissing } from "./traceEventMissing.ts";
import { traceEventUnmatched } from "./traceEventUnmatched.ts";
import { traceLossOverLimit } from "./traceLossOverLimit.ts";
import { traceReflectsTooMuch } from "./traceReflectsTooMuch.ts";
import { traceSectionOverLimit } from "./traceSectionOverLimit.ts";
import { traceWholeOverLimit } from "./traceWholeOverLimit.ts";
import { traceWithoutFiber } from "./traceWithoutFiber.ts";
import { unitWithoutPort } from "./unitWithoutPort.ts";
import { unitWithTwoDrops } from "./unitWithTwoDrops.ts";
import { usableSpaceUnknown } from "./usableSpaceUnknown.ts";
import { windFactorMissing } from "./windFactorMissing.ts";

/** Every rule that has a file of its own. A test fails where one of this folder is missing here. */
export const ownRules: readonly Rule[] = [
  addressRepeated,
  anchorStrengthUnknown,
  builtBond,
  builtHouseTag,
  builtLight,
  builtMarks,
  builtOffset,
  builtPort,
  builtSlack,
  cableLongerThanReel,
  cablePathBroken,
  clearanceSetIncomplete,
  coilAwayFromTerminal,
  coilOfAnotherCable,
  coilTooShort,
  coilWithoutTerminal,
  communicationSeparationAtPole,
  communicationSeparationInSpan,
  crossingClearance,
  crossingClearanceUnknown,
  crossingWithoutLimit,
  deadLengthReused,
  dropClearance,
  dropClearanceUnknown,
  dropOverForbidden,
  dropOverReach,
  dropsCross,
  extremeLoadMissing,
  feedMissing,
  feedOverSplit,
  fiberBeyondCable,
  fiberBroken,
  fiberCutUpstream,
  fiberUsedTwice,
  groundClearance,
  groundMissing,
  guysCrowdClimbingSpace,
  riserBracketTooLow,
  guyMissing,
  guyOverloaded,
  hangingOverlap,
  lateralNotSpliced,
  lightDifferential,
  lightTooStrong,
  lightTooWeak,
  outsideUsableSpace,
  ownStrandsTooNear,
  poleTagRepeated,
  poleWithoutSpan,
  portBeyondModel,
  portUsedTwice,
  portWithoutLight,
  pullDifference,
  reachOverClass,
  readingAstray,
  readingUndrawn,
  sagBesideNeighbour,
  spanInferred,
  spanLengthDiffers,
  spanOverLongest,
  spanRepeated,
  spanSagUnknown,
  spanUnstrung,
  spanWithoutStrand,
  spareFibersInTube,
  sparePorts,
  splitOverClass,
  splitterFedTwice,
  splitterWithoutFiber,
  strandOfSpanUnknown,
  strandTension,
  strengthSetIncomplete,
  streetLightSeparation,
  structureClearance,
  structureSwept,
  structureWithoutLimit,
  supplySeparationAtPole,
  supplySeparationInSpan,
  supplyVoltageOverLimit,
  terminalInClimbingSpace,
  terminalNameRepeated,
  terminalNotAllowed,
  terminalOffCable,
  terminalPastSpan,
  terminalSpanTooShort,
  terminalStandoff,
  terminalTwoTubes,
  terminalWithoutCoil,
  traceEventMissing,
  traceEventUnmatched,
  traceLossOverLimit,
  traceReflectsTooMuch,
  traceSectionOverLimit,
  traceWholeOverLimit,
  traceWithoutFiber,
  unitWithTwoDrops,
  unitWithoutPort,
  usableSpaceUnknown,
  windFactorMissing,
];

/** Every rule of the program: those, and those that what was built is held against besides the drawing. */
export const ruleRegister: readonly Rule[] = [...ownRules, ...asBuiltRules];

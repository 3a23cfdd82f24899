import { heightReadings, hungReadings, lineReadings, offsetReadings } from "../closeout/builtReadings.ts";
import type { Plant } from "../plant/plant.ts";
import { asBuilt } from "./asBuilt.ts";
import { communicationSeparationAtPole } from "./communicationSeparationAtPole.ts";
import { communicationSeparationInSpan } from "./communicationSeparationInSpan.ts";
import { crossingClearance } from "./crossingClearance.ts";
import { dropClearance } from "./dropClearance.ts";
import { groundClearance } from "./groundClearance.ts";
import { hangingOverlap } from "./hangingOverlap.ts";
import { outsideUsableSpace } from "./outsideUsableSpace.ts";
import { ownStrandsTooNear } from "./ownStrandsTooNear.ts";
import type { Rule } from "./rule.ts";
import { streetLightSeparation } from "./streetLightSeparation.ts";
import { structureClearance } from "./structureClearance.ts";
import { structureSwept } from "./structureSwept.ts";
import { supplySeparationAtPole } from "./supplySeparationAtPole.ts";
import { supplySeparationInSpan } from "./supplySeparationInSpan.ts";
import { terminalInClimbingSpace } from "./terminalInClimbingSpace.ts";

/** The rules of the design that what was built is held against too. */
export const asBuiltRules: readonly Rule[] = [
  asBuilt(groundClearance, lineReadings),
  asBuilt(supplySeparationInSpan, lineReadings),
  asBuilt(communicationSeparationInSpan, lineReadings),
  asBuilt(hangingOverlap, hungReadings),
  asBuilt(crossingClearance, (plant, id) => lineReadings(plant, plant.rowOf("crossing", id).spanId)),
  asBuilt(structureClearance, byStructure),
  asBuilt(structureSwept, byStructure),
  asBuilt(dropClearance, byDrop),
  asBuilt(supplySeparationAtPole, byAttachment),
  asBuilt(communicationSeparationAtPole, byAttachment),
  asBuilt(streetLightSeparation, byAttachment),
  asBuilt(outsideUsableSpace, byAttachment),
  asBuilt(ownStrandsTooNear, heightReadings),
  asBuilt(terminalInClimbingSpace, offsetReadings),
];

function byStructure(plant: Plant, structureId: string): readonly string[] {
  return lineReadings(plant, plant.rowOf("structure", structureId).spanId);
}

function byDrop(plant: Plant, dropId: string): readonly string[] {
  return lineReadings(plant, plant.rowOf("terminal", plant.rowOf("drop", dropId).terminalId).spanId);
}

function byAttachment(plant: Plant, attachmentId: string): readonly string[] {
  return heightReadings(plant, plant.rowOf("attachment", attachmentId).poleId);
}

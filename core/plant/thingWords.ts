import type { DropSurface } from "../model/clearanceRows.ts";
import type { Attachment } from "../model/tables.ts";

const kindWordsOf: Readonly<Record<Attachment["kind"], string>> = {
  ourStrand: "our strand",
  communication: "communication",
  neutral: "neutral",
  secondary: "secondary",
  primary: "primary",
  supplyFiber: "fiber in the supply space",
  equipment: "equipment",
  streetLight: "street-light bracket",
  dripLoop: "street-light drip loop",
  riser: "riser bracket",
};

const surfaceWordsOf: Readonly<Record<DropSurface, string>> = {
  road: "road",
  highLoadRoad: "high-load road",
  limitedAccessRoad: "limited-access road",
  stateHighway: "state highway",
  driveway: "driveway",
  homeDriveway: "residential driveway",
  alongStreet: "ground along a street",
  alongRoad: "ground along a country road",
  roadside: "roadside",
  rail: "rail",
  trolley: "railway with trolley wire",
  water: "water",
  sailingWater20: "sailing water under 20 acres",
  sailingWater200: "sailing water of 20 to 200 acres",
  sailingWater2000: "sailing water of 200 to 2000 acres",
  sailingWater: "sailing water over 2000 acres",
  launch20: "boat launch at water under 20 acres",
  launch200: "boat launch at water of 20 to 200 acres",
  launch2000: "boat launch at water of 200 to 2000 acres",
  launch: "boat launch at water over 2000 acres",
  pedestrian: "path",
  field: "field",
  roof: "roof",
};

/** What is on a pole, in a sentence. */
export function kindWords(kind: Attachment["kind"]): string {
  return kindWordsOf[kind];
}

/** What the line or a drop passes over, in a sentence. */
export function surfaceWords(surface: DropSurface): string {
  return surfaceWordsOf[surface];
}

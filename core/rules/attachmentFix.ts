import { attachmentRange } from "../jointpole/attachmentRange.ts";
import { nearestWholeHeightM } from "../jointpole/wholeHeight.ts";
import type { Plant } from "../plant/plant.ts";
import { formatLength } from "../units/formatLength.ts";
import type { Fix } from "./rule.ts";

/**
 * Our attachment on a pole at the nearest height at which it satisfies everything at once; none where there is no such height, or the
 * pole has no attachment of ours to move.
 */
export function moveIntoRangeFix(plant: Plant, poleId: string): readonly Fix[] {
  const range = attachmentRange(plant, poleId);
  if (range.kind === "unknown" || range.present.attachmentId === null) return [];
  const { unitSystem } = plant.settings();
  const heightM = nearestWholeHeightM(range.free, range.present.heightM, unitSystem);
  if (heightM === null) return [];
  return [
    {
      label: `Move our attachment at pole ${plant.rowOf("pole", poleId).tag} to ${formatLength(heightM, unitSystem, "height")}`,
      command: "attachment.set",
      input: { attachmentId: range.present.attachmentId, heightM },
    },
  ];
}

/** Our attachment at either end of a span moved so. */
export function moveEndIntoRangeFixes(plant: Plant, spanId: string): readonly Fix[] {
  const { fromPoleId, toPoleId } = plant.rowOf("span", spanId);
  return [fromPoleId, toPoleId].flatMap((poleId) => moveIntoRangeFix(plant, poleId));
}

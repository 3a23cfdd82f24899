import { climbingSpace } from "../plant/climbingSpace.ts";
import { defineQuery, type Plant } from "../plant/plant.ts";
import { carriesStrand } from "../plant/separation.ts";
import { type StrandHeight, strandAtPole } from "../plant/strandHeight.ts";
import { terminalHang } from "../plant/terminalView.ts";
import { type Barred, type FreeHeights, freeHeights } from "./barred.ts";
import { barredByDrops } from "./barredByDrops.ts";
import { barredByPole } from "./barredByPole.ts";
import { barredBySurfaces } from "./barredBySurfaces.ts";
import { barredAtPole, barredInSpans } from "./barredByWires.ts";
import { spansAt } from "./spanAtPole.ts";

/** Where our strand may be attached on a pole, or why nobody can tell. */
export type AttachmentRange =
  | {
      readonly kind: "known";
      readonly present: StrandHeight;
      /** Heights at which every rule that hangs on the height is content, upwards; none where there is no such height. */
      readonly free: readonly FreeHeights[];
      /** Everything that bars a height, whether it sets an end of the free ones or another bars more. */
      readonly barred: readonly Barred[];
      /** Terminals beside the pole whose near end is in the climbing space: no height mends that. */
      readonly inClimbingSpace: readonly string[];
      /** What could not be looked at, a sentence each. */
      readonly unchecked: readonly string[];
    }
  | { readonly kind: "unknown"; readonly why: string };

/**
 * The heights at a pole at which our strand satisfies everything at once: clearance of the spans beside it over crossings, open ground
 * and structures and of their drops, in every case that binds; separation from supply (the worker safety zone) and other communication
 * at the pole and in the spans, all wires sagging; the usable space of the pole. Other poles and other parties keep their heights.
 *
 * Solved, not tried: what is spare at a place of a span is a + b s + c s² with this pole's height over 0 left out, s being the pole's
 * share in the height there; a height h adds h s. Nothing may lack on a piece, so h is at least the most of -(a / s + b + c s), which
 * turns once (`leastPerShare.ts`). Wires above ours give a highest height the same way; another communication wire bars the heights
 * between the highest below it and the lowest above it.
 *
 * Error: that of floating point, under a millionth of a millimetre; sags, limits and what is assumed for other parties' wires are those
 * of the rules, with theirs.
 */
export const attachmentRange = defineQuery("attachment-range", (plant, poleId): AttachmentRange => {
  const { tag, aboveGroundM } = plant.rowOf("pole", poleId);
  if (!carriesStrand(plant, poleId)) return { kind: "unknown", why: `Pole ${tag} carries no strand of ours.` };
  if (plant.whereAll("attachment", { poleId, kind: "ourStrand" }).length > 1)
    return {
      kind: "unknown",
      why: `Pole ${tag} carries several strands of ours: their places are not solved together.`,
    };
  const surfaces = barredBySurfaces(plant, poleId);
  const drops = barredByDrops(plant, poleId);
  const barred = [
    ...surfaces.barred,
    ...drops.barred,
    ...barredAtPole(plant, poleId),
    ...barredInSpans(plant, poleId),
    ...barredByPole(plant, poleId),
  ];
  return {
    kind: "known",
    present: strandAtPole(plant, poleId),
    free: freeHeights(barred),
    barred,
    inClimbingSpace: terminalsTooNear(plant, poleId),
    unchecked: [
      ...new Set([...surfaces.unchecked, ...drops.unchecked]),
      ...(aboveGroundM === null ? [`How high pole ${tag} stands is unknown.`] : []),
    ],
  };
});

function terminalsTooNear(plant: Plant, poleId: string): readonly string[] {
  const { spaceM } = climbingSpace(plant, poleId);
  return spansAt(plant, poleId)
    .flatMap(({ spanId }) => plant.where("terminal", "spanId", spanId))
    .filter((id) => {
      const hang = terminalHang(plant, id);
      const { lengthM } = plant.rowOf("terminalModel", plant.rowOf("terminal", id).terminalModelId);
      return hang.poleId === poleId && hang.fromPoleM - lengthM / 2 < spaceM;
    });
}

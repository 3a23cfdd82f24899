import { type WindyCase, windyCases } from "../model/loadRows.ts";
import { blowOutM } from "./blowOut.ts";
import { lineHeight } from "./lineHeight.ts";
import type { Plant } from "./plant.ts";
import { stateIn } from "./strength.ts";
import { structurePassage } from "./structureClearance.ts";

/** How far a case's wind swings the strand towards what stands beside it. */
export type Sweep = {
  readonly condition: WindyCase;
  /** Largest swing along the structure, m. */
  readonly swingM: number;
  /** True where the swung line hangs over the top of it there; null where nobody measured the heights. */
  readonly isOver: boolean | null;
};

/** The swing of the strand along a structure in every case with wind the route is checked under, largest first. */
export function structureSweeps(plant: Plant, structureId: string): readonly Sweep[] {
  const { spanId, offsetM, lengthM } = plant.rowOf("structure", structureId);
  const spanM = plant.rowOf("span", spanId).lengthM;
  // the strand swings most at midspan, so along a structure at its place nearest to there
  const atM = Math.min(Math.max(spanM / 2, offsetM - lengthM / 2), offsetM + lengthM / 2);
  return windyCases
    .flatMap((condition): Sweep[] => {
      const swingM = blowOutM(plant, spanId, atM, condition);
      return swingM === null ? [] : [{ condition, swingM, isOver: swingsOver(plant, structureId, atM, condition) }];
    })
    .sort((a, b) => b.swingM - a.swingM);
}

function swingsOver(plant: Plant, structureId: string, atM: number, condition: WindyCase): boolean | null {
  const { spanId } = plant.rowOf("structure", structureId);
  const line = lineHeight(plant, spanId);
  const passage = structurePassage(plant, structureId);
  const state = stateIn(plant, spanId, condition);
  if (line.kind === "unknown" || passage.kind === "unknown" || !state) return null;
  const places = [...(passage.stretches[0] ?? []), atM];
  return places.every((offsetM) => line.undersideInM(offsetM, state) > passage.over.heightAtM(offsetM));
}

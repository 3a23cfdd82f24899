import type { StrengthLimit } from "../model/tables.ts";
import type { Plant } from "./plant.ts";
import { strengthLimitFor } from "./strength.ts";

/** The part of a guy that may be pulled least. */
export type WeakestOfGuy = {
  readonly words: "guy" | "anchor of the guy";
  readonly limit: StrengthLimit;
  /** What it breaks at or holds, N. */
  readonly strengthN: number;
  /** What the strength set lets it be pulled with, N. */
  readonly mostN: number;
};

/** What limits a guy under the district's load: its strand, or its anchor where what that holds is known; undefined without a limit. */
export function weakestOfGuy(plant: Plant, guyId: string): WeakestOfGuy | undefined {
  const { strandTypeId, anchorN } = plant.rowOf("guy", guyId);
  const parts = [
    { words: "guy", part: "guy", strengthN: plant.rowOf("strandType", strandTypeId).breakingN },
    { words: "anchor of the guy", part: "anchor", strengthN: anchorN },
  ] as const;
  return parts
    .flatMap(({ words, part, strengthN }) => {
      const limit = strengthLimitFor(plant, part, "loaded");
      return limit && strengthN !== null ? [{ words, limit, strengthN, mostN: limit.limitFrac * strengthN }] : [];
    })
    .sort((a, b) => a.mostN - b.mostN)[0];
}

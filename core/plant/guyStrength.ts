import { type WindyCase, windyCases } from "../model/loadRows.ts";
import type { StrengthLimit } from "../model/tables.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { guyTensionN } from "./poleGuys.ts";
import { chosenCases, strengthLimitFor } from "./strength.ts";

/** The part of a guy that may be pulled least. */
export type WeakestOfGuy = {
  readonly words: "guy" | "anchor of the guy";
  readonly limit: StrengthLimit;
  /** What it breaks at or holds, N. */
  readonly strengthN: number;
  /** What the strength set lets it be pulled with, N. */
  readonly mostN: number;
};

/** What a guy is held against in the case it comes nearest to its limit in. */
export type GuyInCase = {
  readonly condition: WindyCase;
  /** Along the guy, with the load factors, N; null where a tension of the strand is unknown. */
  readonly tensionN: number | null;
  readonly weakest: WeakestOfGuy | undefined;
};

/** What limits a guy in a case: its strand, or its anchor where what that holds is known; undefined without a limit. */
function weakestOfGuy(plant: Plant, guyId: string, condition: WindyCase): WeakestOfGuy | undefined {
  const { strandTypeId, anchorN } = plant.rowOf("guy", guyId);
  const parts = [
    { words: "guy", part: "guy", strengthN: plant.rowOf("strandType", strandTypeId).breakingN },
    { words: "anchor of the guy", part: "anchor", strengthN: anchorN },
  ] as const;
  return parts
    .flatMap(({ words, part, strengthN }) => {
      const limit = strengthLimitFor(plant, part, condition);
      return limit && strengthN !== null ? [{ words, limit, strengthN, mostN: limit.limitFrac * strengthN }] : [];
    })
    .sort((a, b) => a.mostN - b.mostN)[0];
}

/** A guy in its governing case: that in which it uses most of what it may be pulled with; under the district's load without a limit. */
export const governingOfGuy = defineQuery("governing-of-guy", (plant, guyId): GuyInCase => {
  const chosen = chosenCases(plant);
  const cases = windyCases
    .filter((one) => chosen.includes(one))
    .map((condition): GuyInCase => {
      const tensionN = guyTensionN(plant, guyId, condition);
      return { condition, tensionN, weakest: weakestOfGuy(plant, guyId, condition) };
    });
  const used = ({ tensionN, weakest }: GuyInCase) => (weakest ? (tensionN ?? 0) / weakest.mostN : -1);
  const [governing] = cases.sort((a, b) => used(b) - used(a));
  return governing ?? { condition: "loaded", tensionN: null, weakest: undefined };
});

import type { Plant } from "../plant/plant.ts";
import type { Barred, Cause } from "./barred.ts";

/** Heights outside the usable space of a pole: under the company's lowest attachment, and too near the top where it is known. */
export function barredByPole(plant: Plant, poleId: string): readonly Barred[] {
  const { aboveGroundM } = plant.rowOf("pole", poleId);
  const { usableFromM, poleTopGapM } = plant.settings();
  const cause = (limit: "usableFromM" | "poleTopGapM"): Cause => ({
    ruleId: "outside-usable-space",
    against: { table: "pole", id: poleId },
    spanId: null,
    condition: null,
    limit,
    shares: limit === "usableFromM" ? { above: null, below: 1 } : { above: 1, below: null },
  });
  const low = { aboveM: Number.NEGATIVE_INFINITY, belowM: usableFromM, cause: cause("usableFromM") };
  if (aboveGroundM === null) return [low];
  return [low, { aboveM: aboveGroundM - poleTopGapM, belowM: Number.POSITIVE_INFINITY, cause: cause("poleTopGapM") }];
}

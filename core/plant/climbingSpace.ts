import type { ClearanceLimit } from "../model/tables.ts";
import { clearanceLimitFor } from "./clearance.ts";
import type { Plant } from "./plant.ts";
import { turnAtPole } from "./poleGuys.ts";

/** What is kept free for a climber beside a pole. */
export type ClimbingSpace = {
  /** From the pole's centre line, m. */
  readonly spaceM: number;
  /** The row of the clearance set that asks for it; null where the company's own standard asks for as much or more. */
  readonly limit: ClearanceLimit | null;
};

/** The climbing space of a pole: the company's, or what the clearance set asks for where that is more; at a line angle a set may ask less. */
export function climbingSpace(plant: Plant, poleId: string): ClimbingSpace {
  const { climbingSpaceM, unguyedAngleRad } = plant.settings();
  const turn = turnAtPole(plant, poleId);
  const isAngle = turn !== null && !turn.isDeadEnd && turn.turnRad > unguyedAngleRad;
  const atAngle = isAngle ? clearanceLimitFor(plant, "climbingSpaceAtAngle") : undefined;
  const limit = atAngle ?? clearanceLimitFor(plant, "climbingSpace");
  return limit && limit.limitM > climbingSpaceM
    ? { spaceM: limit.limitM, limit }
    : { spaceM: climbingSpaceM, limit: null };
}

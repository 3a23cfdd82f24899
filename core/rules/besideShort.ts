import type { Beside } from "../plant/structureClearance.ts";
import { isUnder } from "./withinLimit.ts";

/** How a structure beside the line stands: far enough, high enough under it instead, or with so much lacking, m. */
export type BesideStand = { readonly kind: "enough" | "over" } | { readonly kind: "short"; readonly shortM: number };

/** Holds the distance beside a structure against its limit: where it is too near, the line may still pass high enough over it. */
export function besideStand({ besideM, limit, over }: Beside): BesideStand {
  if (!limit || !isUnder(besideM, limit.limitM)) return { kind: "enough" };
  if (over && !isUnder(over.measuredM, over.limit.limitM)) return { kind: "over" };
  return { kind: "short", shortM: limit.limitM - besideM };
}

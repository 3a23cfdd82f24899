import type { Beside } from "../plant/structureClearance.ts";
import { isUnder } from "./withinLimit.ts";

/** How a structure beside the line stands: far enough, passed well over or under instead, or with so much lacking, m. */
export type BesideStand =
  | { readonly kind: "enough" | "over" | "under" }
  | { readonly kind: "short"; readonly shortM: number };

/** Holds the distance beside a structure against its limit: where it is too near, the line may still pass over or under it. */
export function besideStand({ besideM, limit, over, under }: Beside): BesideStand {
  if (!limit || !isUnder(besideM, limit.limitM)) return { kind: "enough" };
  for (const [kind, worst] of [
    ["over", over],
    ["under", under],
  ] as const)
    if (worst && !isUnder(worst.measuredM, worst.limit.limitM)) return { kind };
  return { kind: "short", shortM: limit.limitM - besideM };
}

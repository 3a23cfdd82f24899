import { distanceM } from "../geodesy/distance.ts";
import type { LonLat } from "../geodesy/lonLat.ts";

/** A pole as spans are made of it. */
export type SpanPole = {
  readonly tag: string;
  readonly eastM: number;
  readonly northM: number;
  /** Its place on the globe; null on a local grid. */
  readonly lonLat: LonLat | null;
};

/** A span to be made between two tagged poles. */
export type NewSpan = {
  readonly fromTag: string;
  readonly toTag: string;
  /** Horizontal, rounded to 1 mm. */
  readonly lengthM: number;
  readonly origin: "surveyed" | "ordered" | "inferred";
  readonly note: string;
  /** Why a person should look at it; empty where there is no reason. */
  readonly review: string;
};

/**
 * Length of a span between two poles, m, rounded to 1 mm: on the ellipsoid where both have a place on the globe, else on the
 * local grid. 0 where they stand in one place.
 */
export function measuredSpanM(from: SpanPole, to: SpanPole): number {
  const lengthM =
    from.lonLat && to.lonLat
      ? distanceM(from.lonLat, to.lonLat)
      : Math.hypot(to.eastM - from.eastM, to.northM - from.northM);
  return Math.round(lengthM * 1000) / 1000;
}

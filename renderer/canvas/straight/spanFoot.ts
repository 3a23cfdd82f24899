import { type Point, planeDistanceM, spanEnds, spansAtPole } from "../../../core/plant/geometry.ts";
import type { Plant } from "../../../core/plant/plant.ts";

/** The point of a span nearest to a point of the ground. */
export type SpanFoot = {
  readonly spanId: string;
  /** Share of the span's drawn length from its first pole, 0 to 1. */
  readonly partFrac: number;
  /** How far the point lies to the left of the span seen from its first pole, m; negative to the right. */
  readonly leftM: number;
  readonly awayM: number;
};

/** Poles are looked for within these distances, one after the other, m. */
const radiiM = [150, 600, 2500, 10_000];

/** Spans near a point, nearest first; looks farther out only where there is none close by. */
export function nearSpans(plant: Plant, point: Point): readonly SpanFoot[] {
  for (const radiusM of radiiM) {
    const spanIds = new Set(plant.near("pole", point, radiusM).flatMap((id) => spansAtPole(plant, id)));
    if (spanIds.size > 0) {
      return [...spanIds].map((id) => footOn(plant, id, point)).sort((a, b) => a.awayM - b.awayM);
    }
  }
  return [];
}

/** The foot of a point on one span. */
function footOn(plant: Plant, spanId: string, point: Point): SpanFoot {
  const { from, to } = spanEnds(plant, spanId);
  const [dx, dy] = [to.eastM - from.eastM, to.northM - from.northM];
  const [px, py] = [point.eastM - from.eastM, point.northM - from.northM];
  const squared = dx * dx + dy * dy;
  const partFrac = squared > 0 ? Math.min(1, Math.max(0, (px * dx + py * dy) / squared)) : 0;
  const foot = { eastM: from.eastM + dx * partFrac, northM: from.northM + dy * partFrac };
  const awayM = planeDistanceM(foot, point);
  return { spanId, partFrac, awayM, leftM: dx * py - dy * px >= 0 ? awayM : -awayM };
}

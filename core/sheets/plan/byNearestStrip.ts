import { type Point, planeDistanceM } from "../../plant/geometry.ts";
import type { Plant } from "../../plant/plant.ts";
import { alongStep } from "./stripStep.ts";
import type { Strip } from "./strips.ts";

/** Each thing that has a place with the strip whose line is nearest to it, by the strip's key. */
export function byNearestStrip<T>(
  plant: Plant,
  cut: readonly Strip[],
  things: readonly T[],
  placeOf: (one: T) => Point | null,
): ReadonlyMap<string, readonly T[]> {
  const points = cut.flatMap((strip) =>
    strip.steps.flatMap((step) =>
      [0, 0.25, 0.5, 0.75, 1]
        .filter((frac) => frac >= step.startFrac && frac <= step.endFrac)
        .map((frac) => ({ key: strip.key, at: alongStep(plant, step, frac) })),
    ),
  );
  const byStrip = new Map<string, T[]>();
  for (const one of things) {
    const at = placeOf(one);
    if (!at) continue;
    let nearest: { key: string; farM: number } | null = null;
    for (const point of points) {
      const farM = planeDistanceM(point.at, at);
      if (!nearest || farM < nearest.farM - 1e-9) nearest = { key: point.key, farM };
    }
    if (nearest) byStrip.set(nearest.key, [...(byStrip.get(nearest.key) ?? []), one]);
  }
  return byStrip;
}

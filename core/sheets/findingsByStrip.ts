import { planeDistanceM } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import type { NumberedFinding } from "./book.ts";
import { alongStep } from "./stripStep.ts";
import type { Strip } from "./strips.ts";

/** Each finding with the strip whose line is nearest to it. */
export function findingsByStrip(
  plant: Plant,
  cut: readonly Strip[],
  findings: readonly NumberedFinding[],
): ReadonlyMap<string, readonly NumberedFinding[]> {
  const points = cut.flatMap((strip) =>
    strip.steps.flatMap((step) =>
      [0, 0.25, 0.5, 0.75, 1]
        .filter((frac) => frac >= step.startFrac && frac <= step.endFrac)
        .map((frac) => ({ key: strip.key, at: alongStep(plant, step, frac) })),
    ),
  );
  const byStrip = new Map<string, NumberedFinding[]>();
  for (const one of findings) {
    const { at } = one.finding;
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

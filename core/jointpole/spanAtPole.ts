import { farPoleId } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { strungSpans } from "../plant/poleLoad.ts";
import type { HungState } from "../plant/spanSag.ts";

/** A span of ours as one of its poles sees it. */
export type SpanAtPole = {
  readonly spanId: string;
  readonly lengthM: number;
  readonly farPoleId: string;
  /** Part of this pole's height in the height at an offset from the span's first pole: 1 here, 0 at the far pole. */
  readonly shareAt: (offsetM: number) => number;
};

/** The spans at a pole that carry strand of ours. */
export function spansAt(plant: Plant, poleId: string): readonly SpanAtPole[] {
  return strungSpans(plant, poleId).map((spanId) => {
    const { fromPoleId, lengthM } = plant.rowOf("span", spanId);
    const shareAt = (offsetM: number) => (fromPoleId === poleId ? 1 - offsetM / lengthM : offsetM / lengthM);
    return { spanId, lengthM, farPoleId: farPoleId(plant, spanId, poleId), shareAt };
  });
}

/**
 * How our strand's height bends over the share between what hangs on it, m: half of w L² / H, four times the sag of a bare span.
 *
 * @source the parabola between point loads, y'' = w / H; textbook statics
 */
export function strandBendM(lengthM: number, { loadNPerM, horizontalN }: HungState): number {
  return (loadNPerM * lengthM ** 2) / (2 * horizontalN);
}

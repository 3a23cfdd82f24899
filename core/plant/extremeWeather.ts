import type { WindFactor } from "../model/tables.ts";
import type { LineLoadCase } from "../strand/lineLoad.ts";
import { windPressurePa } from "../strand/windPressure.ts";
import type { Plant } from "./plant.ts";
import { type SpanBundle, spanBundle } from "./spanLoad.ts";
import { strandAtPole } from "./strandHeight.ts";

/** Cases of weather beyond the district's load. */
export const extremeCases = ["extremeWind", "extremeIce"] as const;

export type ExtremeCase = (typeof extremeCases)[number];

/** The row of such a case that the route is checked under; undefined where it is not. */
export function extremeRow<C extends ExtremeCase>(plant: Plant, condition: C) {
  const { extremeWindId, extremeIceId } = plant.settings();
  const id = condition === "extremeWind" ? extremeWindId : extremeIceId;
  return id === null ? undefined : plant.rowOf(condition, id);
}

/** A factor of wind on a wire by its height or its span, and the row it was read from; factor 1 and no row where there is none. */
export type FoundFactor = {
  readonly factor: number;
  readonly row: WindFactor | null;
  /** True where the height or span is larger than the last row tells: that row stands in. */
  readonly isBeyond: boolean;
};

/** Height of a span's strand above ground at the pole it hangs higher on, m: what kz goes by. */
export function wireHeightM(plant: Plant, spanId: string): number {
  const { fromPoleId, toPoleId } = plant.rowOf("span", spanId);
  return Math.max(strandAtPole(plant, fromPoleId).heightM, strandAtPole(plant, toPoleId).heightM);
}

/** Factors of extreme wind on a span: kz by its height, GRF by its length. */
export function windFactors(plant: Plant, spanId: string): Readonly<Record<WindFactor["kind"], FoundFactor>> {
  const rows = plant.all("windFactor").map((id) => plant.rowOf("windFactor", id));
  const found = (kind: WindFactor["kind"], sizeM: number): FoundFactor => {
    const own = rows.filter((row) => row.kind === kind).sort((a, b) => a.upToM - b.upToM);
    const row = own.find(({ upToM }) => sizeM <= upToM * (1 + 1e-9));
    const last = row ?? own.at(-1) ?? null;
    return { factor: last?.factor ?? 1, row: last, isBeyond: last !== null && row === undefined };
  };
  return {
    height: found("height", wireHeightM(plant, spanId)),
    span: found("span", plant.rowOf("span", spanId).lengthM),
  };
}

/**
 * A span's bundle in the extreme weather the route is checked under; null where it is not, or carries no strand. Ice with wind takes its
 * gust without factors of height and span.
 *
 * @source NESC Rules 250C and 250D, from memory; checked in tests/standards/extremeLoads.test.ts
 */
export function extremeLoadCase(plant: Plant, spanId: string, condition: ExtremeCase): LineLoadCase | null {
  const bundle = spanBundle(plant, spanId);
  if (bundle === null) return null;
  return condition === "extremeWind" ? inWind(plant, spanId, bundle) : underIce(plant, bundle);
}

function inWind(plant: Plant, spanId: string, { diameterM, weightNPerM }: SpanBundle): LineLoadCase | null {
  const row = extremeRow(plant, "extremeWind");
  if (!row) return null;
  const { gustMPerS, shapeFactor, importanceFactor } = row;
  const { height, span } = windFactors(plant, spanId);
  const windPa = windPressurePa({
    gustMPerS,
    heightFactor: height.factor,
    spanFactor: span.factor,
    shapeFactor,
    importanceFactor,
  });
  return { diameterM, weightNPerM, iceM: 0, windPa, constantNPerM: 0 };
}

function underIce(plant: Plant, { diameterM, weightNPerM }: SpanBundle): LineLoadCase | null {
  const row = extremeRow(plant, "extremeIce");
  if (!row) return null;
  const { iceM, iceDensityKgPerM3, gustMPerS, shapeFactor } = row;
  const windPa = windPressurePa({ gustMPerS, heightFactor: 1, spanFactor: 1, shapeFactor, importanceFactor: 1 });
  return { diameterM, weightNPerM, iceM, iceDensityKgPerM3, windPa, constantNPerM: 0 };
}

import type { Plant } from "../plant/plant.ts";
import type { SpanRun } from "../plant/spanRuns.ts";
import type { PaperBox } from "./paper.ts";
import { paperMm, planScales, type Scale } from "./scale.ts";
import { offStepM, type UnitMap } from "./stripStep.ts";

/** Shortest median span that still has room for its labels, mm on paper. */
const roomySpanMm = 54;
const tightSpanMm = 36;
/** White kept over and under a strip's houses, mm. */
export const sideMm = 4;

/**
 * The scale of a set's strips and the box each is cut for: half a sheet where houses stand near enough to the line, else a whole one.
 */
export function stripScale(
  plant: Plant,
  runs: readonly SpanRun[],
  units: UnitMap,
  whole: PaperBox,
): { readonly scale: Scale; readonly box: PaperBox; readonly reachM: number } {
  const lengths = runs.flatMap((run) => run.steps.map((step) => step.lengthM)).sort((a, b) => a - b);
  const medianM = lengths[Math.floor(lengths.length / 2)] ?? 1;
  const scales = planScales(plant.settings().unitSystem);
  const roomy = scales.filter((one) => paperMm(medianM, one) >= roomySpanMm).at(-1) ?? scales[0];
  if (!roomy) throw new Error("there is no scale to draw at");
  const reachM = farReachM(plant, runs, units);
  const [upper] = halves(whole);
  const sideRoomMm = (box: PaperBox) => (box.top - box.bottom) / 2 - sideMm;
  if (paperMm(reachM, roomy) <= sideRoomMm(upper)) return { scale: roomy, box: upper, reachM };
  const wide = scales.find((one) => one.denominator >= roomy.denominator && paperMm(reachM, one) <= sideRoomMm(whole));
  return { scale: wide && paperMm(medianM, wide) >= tightSpanMm ? wide : roomy, box: whole, reachM };
}

/** White between two strips of a sheet, mm. */
export const betweenMm = 5;

/** The upper and the lower half of a box, with white between. */
export function halves(box: PaperBox): readonly [upper: PaperBox, lower: PaperBox] {
  const middle = (box.top + box.bottom) / 2;
  return [
    { ...box, bottom: middle + betweenMm / 2 },
    { ...box, top: middle - betweenMm / 2 },
  ];
}

/** Distance from the line that nine in ten of the living units a drop may reach are within, m; what lies beyond stretches no strip. */
function farReachM(plant: Plant, runs: readonly SpanRun[], units: UnitMap): number {
  const { dropReachM } = plant.settings();
  const reaches = runs
    .flatMap((run) => run.steps)
    .flatMap((step) => (units.get(step.spanId) ?? []).map((one) => offStepM(plant, step, one.id)))
    .filter((one) => one <= dropReachM)
    .sort((a, b) => a - b);
  return reaches[Math.floor(reaches.length * 0.9)] ?? 0;
}

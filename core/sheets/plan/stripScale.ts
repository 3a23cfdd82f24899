import { planeDistanceM } from "../../plant/geometry.ts";
import type { Plant } from "../../plant/plant.ts";
import type { SpanRun, Step } from "../../plant/spanRuns.ts";
import type { PaperBox } from "../paper/paper.ts";
import { paperMm, planScales, type Scale } from "../paper/scale.ts";
import { cutFrac } from "./cutFrac.ts";
import { offStepM, type UnitMap } from "./stripStep.ts";

/** Shortest median span that still has room for its labels, mm on paper. */
const roomySpanMm = 54;
const tightSpanMm = 36;
/** White kept over and under a strip's houses, mm: its heading lies in it. */
export const sideMm = 9;

/** White kept at a strip's ends for match lines and what hangs over them, mm. */
export const endMm = 16;

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
  const usual = scales.filter((one) => paperMm(medianM, one) >= roomySpanMm).at(-1) ?? scales[0];
  if (!usual) throw new Error("there is no scale to draw at");
  const longestM = Math.max(0, ...runs.map((run) => longestPieceM(plant, run)));
  const roomMm = whole.right - whole.left - 2 * endMm;
  const roomy = scales.find((one) => one.denominator >= usual.denominator && paperMm(longestM, one) <= roomMm) ?? usual;
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

/** The longest piece of a run that cannot be cut: from one cut to the next but one, or from a cut to the run's end, m. */
function longestPieceM(plant: Plant, { steps }: SpanRun): number {
  const drawnM = ({ fromPoleId, toPoleId }: Step) =>
    planeDistanceM(plant.rowOf("pole", fromPoleId), plant.rowOf("pole", toPoleId));
  const pieces = steps.map((step, index) => {
    const before = steps[index - 1];
    const beforeM = before ? drawnM(before) * (1 - cutFrac(plant, before)) : 0;
    const isLast = index === steps.length - 1;
    return beforeM + drawnM(step) * (isLast ? 1 : cutFrac(plant, step));
  });
  return Math.max(0, ...pieces);
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

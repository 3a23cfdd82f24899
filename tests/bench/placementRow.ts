import { contiguousProgram } from "../../core/placement/contiguous.ts";
import { costOf, openField } from "../../core/placement/field.ts";
import type { Problem } from "../../core/placement/problem.ts";
import { solvePlacement } from "../../core/placement/solvePlacement.ts";
import { unitOrderOf } from "../../core/placement/unitOrder.ts";
import { greedyNearestCost } from "../fixtures/placement/greedyNearest.ts";
import { madeStreet, streetKinds } from "../fixtures/placement/madeStreet.ts";
import type { Figures } from "./measure.ts";

/** How a placement went; seconds are those of the processor, so that other work on the machine lengthens them less. */
export type PlacementRow = {
  readonly unitCount: number;
  readonly pointCount: number;
  /** by unit its point; -1 for none */
  readonly pointOf: Int32Array;
  readonly cost: number;
  readonly bound: number;
  readonly gapPercent: number;
  /** until there was a first layout, and until the cheapest one was found */
  readonly firstS: number;
  readonly bestS: number;
  readonly totalS: number;
  readonly contiguousAbovePercent: number;
  /** Infinite where unit after unit to the nearest point with room leaves one over. */
  readonly nearestAbovePercent: number;
  readonly status: string;
};

/**
 * Solves a problem within some seconds of the processor and sets it beside the contiguous and the nearest layout.
 *
 * @param kept  the layout of before, where there is one
 */
export function placementRow(problem: Problem, limitS: number, gap: number, kept?: Int32Array): PlacementRow {
  const startS = processorS();
  const elapsedS = () => processorS() - startS;
  let asked = 0;
  let late = false;
  const stopped = () => {
    // asking the system for the time at each step would itself take time
    asked += 1;
    if (asked % 16 === 0 && elapsedS() > limitS) late = true;
    return late;
  };
  let firstS = Number.NaN;
  let bestS = Number.NaN;
  let least = Number.POSITIVE_INFINITY;
  const better = ({ cost }: { readonly cost: number }) => {
    if (cost >= least) return;
    least = cost;
    bestS = elapsedS();
    if (Number.isNaN(firstS)) firstS = bestS;
  };
  const watch = { elapsedS, stopped, better };
  const { pointOf, cost, bound, status } = solvePlacement(problem, watch, { gap, seed: 1, kept });
  const totalS = elapsedS();
  const field = openField(problem);
  const contiguous = costOf(field, contiguousProgram(field, unitOrderOf(problem)));
  const above = (other: number) => 100 * (other / cost - 1);
  return {
    unitCount: field.unitCount,
    pointCount: field.pointCount,
    pointOf,
    cost,
    bound,
    gapPercent: (100 * (cost - bound)) / cost,
    firstS,
    bestS,
    totalS,
    contiguousAbovePercent: above(contiguous),
    nearestAbovePercent: above(greedyNearestCost(field)),
    status,
  };
}

/** A crowded street of 1,000 units, as three seeds have it: the slowest and the widest gap. */
export function benchPlacement(): Figures {
  const rows = [1, 2, 3].map((seed) =>
    placementRow(madeStreet({ ...streetKinds.crowded, unitCount: 1_000, seed }), 15, 0),
  );
  const most = (of: (row: PlacementRow) => number) => Math.max(...rows.map(of));
  return {
    placementFirstS: most((row) => row.firstS),
    placementTotalS: most((row) => row.totalS),
    placementGapPercent: most((row) => row.gapPercent),
    placementNearestAbovePercent: Math.min(...rows.map((row) => row.nearestAbovePercent)),
  };
}

function processorS(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

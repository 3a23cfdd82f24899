import { contiguousProgram } from "../../core/placement/contiguous.ts";
import { costOf, openField } from "../../core/placement/field.ts";
import type { Problem } from "../../core/placement/problem.ts";
import { solvePlacement } from "../../core/placement/solvePlacement.ts";
import { unitOrderOf } from "../../core/placement/unitOrder.ts";
import { greedyNearestCost } from "../fixtures/placement/greedyNearest.ts";
import { solveByHighs } from "../standards/placementJudge.ts";

/** One way to place, in a process of its own: so its memory is nobody else's. */
export type PeerOrder = {
  readonly way: "nearest" | "contiguous" | "ours" | "highs";
  readonly problem: Problem;
  readonly limitS: number;
  readonly start: Int32Array | null;
};

export type PeerAnswer = {
  /** Infinite where there is no layout of all. */
  readonly cost: number;
  /** Null where the way proves nothing. */
  readonly bound: number | null;
  /** s of the clock, and of the processor, without the start of the process */
  readonly clockS: number;
  readonly processorS: number;
  /** The most the process held, the solver and the problem included. */
  readonly peakMb: number;
  readonly pointOf: Int32Array | null;
  readonly version: string;
};

type Found = Pick<PeerAnswer, "cost" | "bound"> & { readonly pointOf?: Int32Array; readonly version?: string };

const none = Number.POSITIVE_INFINITY;

async function place({ way, problem, limitS, start }: PeerOrder): Promise<Found> {
  if (way === "highs") return solveByHighs(problem, limitS, start);
  if (way === "nearest") return { cost: greedyNearestCost(openField(problem)), bound: null };
  if (way === "contiguous") {
    const field = openField(problem);
    const pointOf = contiguousProgram(field, unitOrderOf(problem));
    return { cost: pointOf.includes(-1) ? none : costOf(field, pointOf), bound: null };
  }
  const startMs = performance.now();
  const elapsedS = (): number => (performance.now() - startMs) / 1000;
  const watch = { elapsedS, stopped: () => elapsedS() > limitS };
  const { cost, bound, pointOf, unserved } = solvePlacement(problem, watch, { gap: 0, seed: 1 });
  return { cost: unserved.length > 0 ? none : cost, bound, pointOf };
}

process.once("message", async (order: PeerOrder) => {
  const startMs = performance.now();
  const before = process.cpuUsage();
  const { cost, bound, pointOf = null, version = "" } = await place(order);
  const { user, system } = process.cpuUsage(before);
  const answer: PeerAnswer = {
    cost,
    bound,
    clockS: (performance.now() - startMs) / 1000,
    processorS: (user + system) / 1e6,
    peakMb: process.resourceUsage().maxRSS / 1000,
    pointOf,
    version,
  };
  process.send?.(answer, () => process.exit());
});

import { parentPort, workerData } from "node:worker_threads";
import { limitedWatch } from "../../core/placement/limitedWatch.ts";
import type { PartPlan } from "../../core/placement/parts/planParts.ts";
import { type PartAnswer, solvePart } from "../../core/placement/parts/solvePart.ts";
import type { Problem } from "../../core/placement/problem.ts";

/** What all threads are given; the long arrays stand in memory they share. */
export type CityOrder = {
  readonly problem: Problem;
  readonly plan: PartPlan;
  /** The next part nobody has taken yet. */
  readonly next: SharedArrayBuffer;
  readonly gap: number;
  readonly stepsPerUnit: number;
};

export type CityWord = {
  readonly part: number;
  readonly answer: PartAnswer;
  /** Most the thread held by itself so far, shared memory not counted. */
  readonly peakMb: number;
};

const { problem, plan, next, gap, stepsPerUnit }: CityOrder = workerData;
const counter = new Int32Array(next);
let peakMb = 0;
let asked = 0;

function solve(part: number): PartAnswer {
  const stepLimit = stepsPerUnit * (plan.units[part]?.length ?? 0);
  const limited = limitedWatch(
    { stepLimit, timeLimitS: Number.POSITIVE_INFINITY },
    () => 0,
    () => false,
  );
  const stopped = (): boolean => {
    asked += 1;
    if (asked % 512 === 0) {
      const { heapUsed, arrayBuffers } = process.memoryUsage();
      peakMb = Math.max(peakMb, (heapUsed + arrayBuffers) / 1e6);
    }
    return limited.stopped();
  };
  return solvePart(problem, plan, part, { elapsedS: limited.elapsedS, stopped }, { gap, seed: 1 });
}

for (let part = Atomics.add(counter, 0, 1); part < plan.points.length; part = Atomics.add(counter, 0, 1)) {
  const answer = solve(part);
  const word: CityWord = { part, answer, peakMb };
  parentPort?.postMessage(word);
}

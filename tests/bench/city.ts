import { availableParallelism, cpus } from "node:os";
import { join } from "node:path";
import { Worker } from "node:worker_threads";
import { openField } from "../../core/placement/field.ts";
import { joinParts } from "../../core/placement/parts/joinParts.ts";
import { type PartPlan, planParts } from "../../core/placement/parts/planParts.ts";
import type { PartAnswer } from "../../core/placement/parts/solvePart.ts";
import type { Problem } from "../../core/placement/problem.ts";
import { greedyNearestCost } from "../fixtures/placement/greedyNearest.ts";
import type { CityOrder, CityWord } from "./cityWorker.ts";
import { namedStreet } from "./namedStreet.ts";

/**
 * A street as long as a city has living units, nowhere falling apart of itself, cut into parts that threads solve.
 *
 *     npm run -s bench city [UNITS [KIND[:SEED] [THREADS [UNITS_PER_PART [GAP_PERCENT [STEPS_PER_UNIT]]]]]]
 *
 * A part ends when its gap is within GAP_PERCENT or its steps are used up; both are counted, not timed, so that cost and bound are
 * the same whatever the threads.
 */
const [
  ,
  ,
  ,
  units = "20000",
  kind = "crowded",
  threads,
  unitsPerPart = "10000",
  gapPercent = "0.1",
  stepsPerUnit = "30",
] = process.argv;
const threadCount = Number(threads ?? availableParallelism());

function shared<T extends Int32Array | Float64Array>(array: T, into: (buffer: SharedArrayBuffer) => T): T {
  const copy = into(new SharedArrayBuffer(array.byteLength));
  copy.set(array);
  return copy;
}
const sharedInts = (array: Int32Array): Int32Array => shared(array, (buffer) => new Int32Array(buffer));

function sharedProblem(): Problem {
  const [name = "", seed = "1"] = kind.split(":");
  const made = namedStreet(name, Number(units), Number(seed));
  return {
    points: made.points,
    demand: sharedInts(made.demand),
    firstArc: sharedInts(made.firstArc),
    arcPoint: sharedInts(made.arcPoint),
    arcCost: shared(made.arcCost, (buffer) => new Float64Array(buffer)),
  };
}

function sharedPlan(problem: Problem): PartPlan {
  const plan = planParts(problem, Number(unitsPerPart));
  return {
    points: plan.points.map(sharedInts),
    units: plan.units.map(sharedInts),
    partOf: sharedInts(plan.partOf),
    sharedFrom: sharedInts(plan.sharedFrom),
    partCount: sharedInts(plan.partCount),
  };
}

type Solved = { readonly answers: readonly PartAnswer[]; readonly peakMb: readonly number[] };

async function solveParts(problem: Problem, plan: PartPlan): Promise<Solved> {
  const next = new SharedArrayBuffer(4);
  const order: CityOrder = { problem, plan, next, gap: Number(gapPercent) / 100, stepsPerUnit: Number(stepsPerUnit) };
  const answers: PartAnswer[] = [];
  let doneCount = 0;
  const thread = (): Promise<number> =>
    new Promise((resolve, reject) => {
      let peakMb = 0;
      const worker = new Worker(join(import.meta.dirname, "cityWorker.mjs"), { workerData: order });
      worker.on("message", (word: CityWord) => {
        answers[word.part] = word.answer;
        peakMb = word.peakMb;
        doneCount += 1;
        if (process.stderr.isTTY) process.stderr.write(`\r${doneCount} of ${plan.points.length} parts `);
      });
      worker.on("error", reject);
      worker.on("exit", () => resolve(peakMb));
    });
  const peakMb = await Promise.all(Array.from({ length: threadCount }, thread));
  if (process.stderr.isTTY) process.stderr.write("\r");
  return { answers, peakMb };
}

let lastMs = performance.now();
function print(name: string, text: string): void {
  const seconds = (performance.now() - lastMs) / 1000;
  lastMs = performance.now();
  console.log(`${name.padEnd(10)} ${text.padEnd(64)} ${seconds.toFixed(1).padStart(8)} s`);
}

console.log(`Node ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? "unknown"}; one run, clock seconds.`);
const startMs = performance.now();
const problem = sharedProblem();
print(
  "made",
  `${problem.demand.length} units, ${problem.points.length} points, ${problem.arcPoint.length} drops to choose from`,
);
const plan = sharedPlan(problem);
const sharedCount = plan.sharedFrom.filter((part) => part >= 0).length;
print("cut", `${plan.points.length} parts; ${sharedCount} units that two parts reach`);
const solveMs = performance.now();
const { answers, peakMb } = await solveParts(problem, plan);
print("solved", `${threadCount} threads, at most ${peakMb.map((mb) => mb.toFixed(0)).join(", ")} MB each`);
const { cost, bound, pointOf } = joinParts(problem, plan, answers);
const solvedS = (performance.now() - solveMs) / 1000;
print("joined", `${pointOf.filter((point) => point === -1).length} units not served`);
const nearest = greedyNearestCost(openField(problem));
print("nearest", `with room: ${((100 * (nearest - cost)) / cost).toFixed(1)} % above`);
console.log(`cost ${cost.toFixed(1)}, bound ${bound.toFixed(1)}, gap ${((100 * (cost - bound)) / cost).toFixed(4)} %`);
console.log(
  `${solvedS.toFixed(1)} s solving and joining, ${((performance.now() - startMs) / 1000).toFixed(1)} s in all`,
);
console.log(
  `${(process.resourceUsage().maxRSS / 1000).toFixed(0)} MB at most, all threads and the shared memory together`,
);

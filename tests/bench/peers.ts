import { fork } from "node:child_process";
import { cpus } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Problem } from "../../core/placement/problem.ts";
import { knownStreets } from "../fixtures/placement/readStreet.ts";
import { median } from "./measure.ts";
import { namedStreet } from "./namedStreet.ts";
import type { PeerAnswer, PeerOrder } from "./peerSolver.ts";

/**
 * Ways to place terminals on the same streets, one after another in the same run: by hand (nearest with room), the contiguous
 * program alone, ours, and HiGHS on the usual formulation, from nothing and from our layout as its start. Each in its own process.
 *
 *     npm run -s bench peers [LIMIT_S,LIMIT_S [STREET,STREET [RUNS]]]
 *
 * A street is a file of the folder (PLACEMENT_SETS/street, else the one of the tests) or KIND:UNITS:SEED, made anew. RUNS is how
 * often each way but HiGHS is run; the median and the slowest are printed.
 */
const [, , , limits = "10,60", streets, runs = "5"] = process.argv;
const peerFile = join(fileURLToPath(import.meta.url), "..", "peerSolver.mjs");
const usual =
  "line:40:7,dense:40:7,crowded:60:7,mid:60:7,crowded:150:7,crowded:300:7,line-300a,mid-300a,town-400a,dense-1000a,crowded-1000a";

function peer(order: PeerOrder): Promise<PeerAnswer> {
  return new Promise((resolve, reject) => {
    const child = fork(peerFile, [], { serialization: "advanced", stdio: ["ignore", "ignore", "inherit", "ipc"] });
    child.once("message", (answer: PeerAnswer) => resolve(answer));
    child.once("exit", (code) => reject(new Error(`the process ended with ${code}`)));
    child.send(order);
  });
}

/** Several runs: all come to the same layout; the times are the median and the slowest. */
async function repeated(order: PeerOrder, runCount: number): Promise<PeerAnswer & { readonly slowestS: number }> {
  const answers: PeerAnswer[] = [];
  for (let run = 0; run < runCount; run += 1) {
    const answer = await peer(order);
    answers.push(answer);
    // what takes long is not run again: its time is known well enough
    if (answer.clockS > 5) break;
  }
  const [first] = answers;
  if (!first) throw new Error("no run");
  return {
    ...first,
    clockS: median(answers.map((one) => one.clockS)),
    processorS: median(answers.map((one) => one.processorS)),
    peakMb: Math.max(...answers.map((one) => one.peakMb)),
    slowestS: Math.max(...answers.map((one) => one.clockS)),
  };
}

function printRow(name: string, limitS: number | null, answer: PeerAnswer & { readonly slowestS: number }): void {
  const { cost, bound } = answer;
  const hasCost = cost !== Number.POSITIVE_INFINITY;
  const hasBound = bound !== null && bound !== Number.NEGATIVE_INFINITY;
  const figures = [
    limitS === null ? "" : String(limitS),
    hasCost ? cost.toFixed(1) : "none",
    bound === null ? "" : hasBound ? bound.toFixed(1) : "none",
    hasCost && hasBound ? ((100 * Math.max(0, cost - bound)) / cost).toFixed(4) : "",
    answer.clockS.toFixed(3),
    answer.slowestS.toFixed(3),
    answer.processorS.toFixed(3),
    answer.peakMb.toFixed(0),
  ];
  console.log(`  ${name.padEnd(24)}`, ...figures.map((text) => text.padStart(10)));
}

async function compare(problem: Problem, limitsS: readonly number[], runCount: number): Promise<string> {
  const order = { problem, limitS: limitsS[0] ?? 10, start: null };
  printRow("nearest with room", null, await repeated({ ...order, way: "nearest" }, runCount));
  printRow("contiguous program", null, await repeated({ ...order, way: "contiguous" }, runCount));
  let version = "";
  for (const limitS of limitsS) {
    const ours = await repeated({ ...order, way: "ours", limitS }, runCount);
    printRow("ours", limitS, ours);
    const highs = await repeated({ ...order, way: "highs", limitS }, 1);
    printRow("HiGHS", limitS, highs);
    const start = ours.pointOf;
    printRow("HiGHS, ours as its start", limitS, await repeated({ ...order, way: "highs", limitS, start }, 1));
    version = highs.version;
  }
  return version;
}

function streetsNamed(
  names: readonly string[],
): { readonly name: string; readonly problem: Problem; known?: number }[] {
  const folder = process.env.PLACEMENT_SETS ?? join(import.meta.dirname, "../../tests/fixtures/placement");
  const files = knownStreets(folder);
  return names.map((name) => {
    const [kind = "", unitCount, seed] = name.split(":");
    const file = files.find((one) => one.name === name);
    if (file) return { name, problem: file.problem, known: file.cost };
    return { name, problem: namedStreet(kind, Number(unitCount), Number(seed ?? 1)) };
  });
}

console.log(
  `Node ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? "unknown"}; one process each, one thread.`,
);
console.log(
  "Limits are of the clock: where cpu s is far below clock s, other work was running and the row says little.",
);
console.log("Left out: glpk.js, GPL-3 and none of our dependencies. A bare Node process holds about 45 MB.\n");
const heads = ["limit s", "cost", "bound", "gap %", "clock s", "slowest s", "cpu s", "peak MB"];
let version = "";
for (const { name, problem, known } of streetsNamed((streets ?? usual).split(","))) {
  const size = `${problem.demand.length} units, ${problem.points.length} points`;
  console.log(`${name}, ${size}${known === undefined ? "" : `, best known ${known}`}`);
  console.log(`  ${"".padEnd(24)}`, ...heads.map((head) => head.padStart(10)));
  version = await compare(problem, limits.split(",").map(Number), Number(runs));
}
console.log(`\nHiGHS ${version} (as it says itself), WebAssembly, one thread.`);

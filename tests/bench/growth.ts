import { cpus } from "node:os";
import type { Problem } from "../../core/placement/problem.ts";
import { solvePlacement } from "../../core/placement/solvePlacement.ts";
import { median } from "./measure.ts";
import { namedStreet } from "./namedStreet.ts";
import { placementRow } from "./placementRow.ts";

/**
 * How the time of a placement grows with its units, on streets of the same kind and seed: "growth" is the ratio of the times over the
 * ratio of the units, against the size before; 1 is as fast as the units.
 *
 *     npm run -s bench growth [UNITS,UNITS,.. [KIND,KIND [SEED [GAP_PERCENT]]]]
 *
 * The searched layout comes before any proof beyond the Lagrange bound; "proof s" is until the gap is no wider than GAP_PERCENT.
 * Processor seconds; up to 5,000 units the median of five runs.
 */
const [, , , sizes = "1000,5000,20000", kinds = "crowded,mid", seed = "1", gapPercent = "0.25"] = process.argv;
/** Target for each step from one size to the next. */
const mostGrowth = 1.3;
const limitS = 900;

const patient = { elapsedS: () => 0, stopped: () => false };

function searchedS(problem: Problem): number {
  const before = process.cpuUsage();
  solvePlacement(problem, patient, { gap: 0, seed: 1, isQuick: true });
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

type Times = { readonly unitCount: number; readonly searchedS: number; readonly provenS: number };

function growth(before: Times | undefined, now: Times, of: (times: Times) => number): string {
  if (!before) return "";
  const ratio = of(now) / of(before) / (now.unitCount / before.unitCount);
  return `${ratio.toFixed(2)}${ratio > mostGrowth ? " !" : "  "}`;
}

function printRow(kind: string, unitCount: number, before: Times | undefined): Times {
  const problem = namedStreet(kind, unitCount, Number(seed));
  const runs = Array.from({ length: unitCount > 5_000 ? 1 : 5 }, () => ({
    searchedS: searchedS(problem),
    row: placementRow(problem, limitS, Number(gapPercent) / 100),
  }));
  const row = runs[0]?.row;
  if (!row) throw new Error("no run");
  const now = {
    unitCount,
    searchedS: median(runs.map((one) => one.searchedS)),
    provenS: median(runs.map((one) => one.row.totalS)),
  };
  const figures = [
    unitCount,
    row.pointCount,
    now.searchedS.toFixed(2),
    growth(before, now, (times) => times.searchedS),
    now.provenS.toFixed(2),
    growth(before, now, (times) => times.provenS),
    row.gapPercent.toFixed(4),
    (process.resourceUsage().maxRSS / 1000).toFixed(0),
  ];
  console.log(kind.padEnd(10), ...figures.map((figure) => String(figure).padStart(12)));
  return now;
}

console.log(
  `Node ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? "unknown"}; processor seconds, one thread.`,
);
console.log(
  `Proof: until the gap is at most ${gapPercent} %. Growth: at most ${mostGrowth} is asked; ! where it is more.`,
);
const heads = ["units", "points", "search s", "growth", "proof s", "growth", "gap %", "peak MB"];
console.log("".padEnd(10), ...heads.map((head) => head.padStart(12)));
for (const kind of kinds.split(",")) {
  let before: Times | undefined;
  for (const unitCount of sizes.split(",").map(Number)) before = printRow(kind, unitCount, before);
}

import { readdirSync, readFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import { searchGeneral } from "../../core/placement/general/searchGeneral.ts";
import type { Problem } from "../../core/placement/problem.ts";
import { readSet } from "../standards/placementSets.ts";
import { median } from "./measure.ts";

/**
 * Published placement sets against their optima. The folder holds a folder a set, each with `optima.csv` (instance, cost) and a
 * file an instance.
 *
 *     npm run -s bench published FOLDER [SET,SET [INSTANCE,INSTANCE]]
 *
 * Times are those of the processor, not of the clock, so that other work on the machine lengthens them less.
 */
const [, , , folder = process.env.PLACEMENT_SETS, wantedSets, wantedInstances] = process.argv;
/** Seconds an instance may take, by set. */
const limitsS: Readonly<Record<string, number>> = { holmberg: 5, orlib: 5, pmedcap: 5, delmaire: 10 };

type Row = {
  readonly costGapPercent: number;
  readonly boundGapPercent: number;
  readonly seconds: number;
  readonly bestAfterS: number;
  readonly proven: boolean;
};

function processorS(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

function solve(problem: Problem, optimum: number, limitS: number): Row {
  const startS = processorS();
  let asked = 0;
  let late = false;
  let best = Number.POSITIVE_INFINITY;
  let bestAfterS = 0;
  const found = searchGeneral(
    problem,
    {
      elapsedS: () => processorS() - startS,
      stopped: () => {
        // asking the system for the time at each step would itself take time
        asked += 1;
        if (asked % 16 === 0 && processorS() - startS > limitS) late = true;
        return late;
      },
      better: ({ cost }) => {
        if (cost >= best) return;
        best = cost;
        bestAfterS = processorS() - startS;
      },
    },
    { seed: 1, gap: 0 },
  );
  const percent = (more: number) => (100 * more) / optimum;
  return {
    costGapPercent: found ? percent(found.cost - optimum) : Number.POSITIVE_INFINITY,
    boundGapPercent: found ? percent(optimum - found.bound) : Number.POSITIVE_INFINITY,
    seconds: processorS() - startS,
    bestAfterS,
    proven: found !== null && found.bound >= found.cost,
  };
}

function printRow(name: string, row: Row): void {
  const { costGapPercent, boundGapPercent, seconds, bestAfterS, proven } = row;
  const figures = [costGapPercent.toFixed(3), boundGapPercent.toFixed(3), seconds.toFixed(2), bestAfterS.toFixed(2)];
  console.log(name.padEnd(20), ...figures.map((text) => text.padStart(9)), proven ? "proven" : "");
}

function summary(name: string, rows: readonly Row[], of: (row: Row) => number): string {
  const figures = rows.map(of);
  const mean = figures.reduce((sum, figure) => sum + figure, 0) / figures.length;
  return `${name}: mean ${mean.toFixed(3)}, median ${median(figures).toFixed(3)}, worst ${Math.max(...figures).toFixed(3)}`;
}

function benchSet(set: string, setFolder: string, limitS: number): void {
  console.log(`\n${set}, ${limitS} s each      above %   bound %         s    best s`);
  const rows: Row[] = [];
  for (const line of readFileSync(join(setFolder, "optima.csv"), "utf8").trim().split("\n").slice(1)) {
    const [instance = "", optimum] = line.split(",");
    if (wantedInstances && !wantedInstances.split(",").includes(instance)) continue;
    const problem = readSet(set, readFileSync(join(setFolder, `${instance}.txt`), "utf8"));
    const row = solve(problem, Number(optimum), limitS);
    printRow(`${set} ${instance}`, row);
    rows.push(row);
  }
  // printed optima are rounded to the cent
  const optimal = rows.filter((row) => row.costGapPercent < 1e-5).length;
  const tooHigh = rows.filter((row) => row.boundGapPercent < -1e-5).length;
  console.log(
    `${optimal} of ${rows.length} at the published optimum, ${rows.filter((row) => row.proven).length} proven`,
  );
  console.log(`${tooHigh} bounds above the published optimum`);
  console.log(summary("% above the optimum", rows, (row) => row.costGapPercent));
  console.log(summary("% the bound is below", rows, (row) => row.boundGapPercent));
  console.log(summary("processor s", rows, (row) => row.seconds));
}

if (!folder) throw new Error("Name the folder of the sets: npm run -s bench published FOLDER");
console.log(`Node ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? "unknown"}; one run each, seed 1.`);
const names = readdirSync(folder).filter((name) => limitsS[name] !== undefined);
for (const set of wantedSets ? wantedSets.split(",") : names) benchSet(set, join(folder, set), limitsS[set] ?? 10);

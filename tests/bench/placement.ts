import { cpus } from "node:os";
import { join } from "node:path";
import type { Problem } from "../../core/placement/problem.ts";
import { madeStreet, streetKinds } from "../fixtures/placement/madeStreet.ts";
import { knownStreets } from "../fixtures/placement/readStreet.ts";
import { placementRow } from "./placementRow.ts";

/**
 * Placement on streets: those of the folder with known costs, then streets of our own seeds.
 *
 *     npm run -s bench placement [UNITS [SEED]]
 *
 * UNITS measures only streets made anew with so many units.
 */
const [, , , units, seed] = process.argv;

function printRow(name: string, problem: Problem, limitS: number, gap: number, known?: number): void {
  const row = placementRow(problem, limitS, gap);
  const figures = [
    row.unitCount,
    row.pointCount,
    row.cost.toFixed(1),
    row.gapPercent.toFixed(4),
    row.firstS.toFixed(3),
    row.bestS.toFixed(2),
    row.totalS.toFixed(2),
    row.contiguousAbovePercent.toFixed(3),
    row.nearestAbovePercent.toFixed(1),
    known === undefined ? "" : (100 * (row.cost / known - 1)).toFixed(3),
  ];
  console.log(name.padEnd(16), ...figures.map((figure) => String(figure).padStart(10)), ` ${row.status}`);
}

console.log(
  `Node ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? "unknown"}; one run each, processor seconds.`,
);
const heads = ["units", "points", "cost", "gap %", "first s", "best s", "total s", "contig. %", "nearest %", "known %"];
console.log("".padEnd(16), ...heads.map((head) => head.padStart(10)));

if (units === undefined)
  for (const { name, problem, cost } of knownStreets(join(import.meta.dirname, "../../tests/fixtures/placement")))
    printRow(name, problem, name.startsWith("town") ? 60 : 15, 0, cost);

const counts = units === undefined ? [1_000, 5_000, 20_000] : [Number(units)];
for (const unitCount of counts) {
  const limitS = unitCount > 20_000 ? 180 : unitCount > 5_000 ? 30 : 15;
  for (const [kind, wishes] of Object.entries(streetKinds))
    printRow(kind, madeStreet({ ...wishes, unitCount, seed: Number(seed ?? 1) }), limitS, 0);
}
console.log(`${Math.round(process.memoryUsage.rss() / 1e6)} MB at the end`);

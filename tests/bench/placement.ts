import { cpus } from "node:os";
import { join } from "node:path";
import type { Problem } from "../../core/placement/problem.ts";
import { editedStreet, editKinds } from "../fixtures/placement/editedStreet.ts";
import { madeStreet, streetKinds } from "../fixtures/placement/madeStreet.ts";
import { knownStreets } from "../fixtures/placement/readStreet.ts";
import { type PlacementRow, placementRow } from "./placementRow.ts";

/**
 * Placement on streets: those of the folder with known costs, then streets of our own seeds. A street of 1,000 units is laid out again
 * after edits of one unit and one pole, from the layout of before.
 *
 *     npm run -s bench placement [UNITS [SEED]]
 *
 * UNITS measures only streets made anew with so many units.
 */
const [, , , units, seed] = process.argv;

/** The cost known of a street, or a layout of it before an edit. */
type Given = { readonly known?: number; readonly kept?: Int32Array };

function printRow(name: string, problem: Problem, limitS: number, { known, kept }: Given = {}): PlacementRow {
  const row = placementRow(problem, limitS, 0, kept);
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
  return row;
}

console.log(
  `Node ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? "unknown"}; one run each, processor seconds.`,
);
const heads = ["units", "points", "cost", "gap %", "first s", "best s", "total s", "contig. %", "nearest %", "known %"];
console.log("".padEnd(16), ...heads.map((head) => head.padStart(10)));

if (units === undefined)
  for (const { name, problem, cost } of knownStreets(join(import.meta.dirname, "../../tests/fixtures/placement")))
    printRow(name, problem, name.startsWith("town") ? 60 : 15, { known: cost });

const counts = units === undefined ? [1_000, 5_000, 20_000] : [Number(units)];
for (const unitCount of counts) {
  const limitS = unitCount > 20_000 ? 180 : unitCount > 5_000 ? 30 : 15;
  for (const [kind, wishes] of Object.entries(streetKinds)) {
    const street = madeStreet({ ...wishes, unitCount, seed: Number(seed ?? 1) });
    const { pointOf } = printRow(kind, street, limitS);
    if (unitCount !== 1_000) continue;
    for (const edit of editKinds) {
      const { problem, kept } = editedStreet(street, pointOf, edit, Number(seed ?? 1));
      printRow(`  ${edit}`, problem, limitS, { kept });
    }
  }
}
console.log(`${Math.round(process.memoryUsage.rss() / 1e6)} MB at the end`);

import { freshIds } from "../model/freshId.ts";
import { ok, type Result } from "../model/result.ts";
import { type Route, settingsOf } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { Guy } from "../model/tables.ts";
import { degFromRad } from "../units/angle.ts";
import type { BadRow } from "./badRow.ts";
import { countRows, type ImportRequest, type PlannedRows } from "./importPlan.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { readGuys } from "./readGuys.ts";

/** What a file of guys would do to a route; one is already there where pole and direction, to the degree, are the same. */
export function planGuys(route: Route, request: ImportRequest, map: ColumnMap): Result<PlannedRows> {
  const { table, options = {} } = request;
  const { unitSystem, strandTypeId: usualId } = settingsOf(route);
  const read = readGuys(table, map, options, unitSystem);
  const poles = new Map([...route.pole.values()].map((pole) => [pole.tag, pole.id]));
  const strands = new Map([...route.strandType.values()].map(({ id, name }) => [name.toLowerCase(), id]));
  const present = new Map([...route.guy.values()].map((one) => [guyKey(one), one]));
  const nextId = freshIds(route, "guy");
  const rows: RowChange[] = [];
  const bad: BadRow[] = [...read.bad];
  const firstLine = new Map<string, number>();
  let skippedCount = 0;
  for (const { fileLine, tag, strand, ...columns } of read.rows) {
    const refuse = (field: string, value: string, what: string, accepted: string): void => {
      bad.push({ file: table.name, line: fileLine, column: map[field] ?? "", value, what, accepted });
    };
    const poleId = poles.get(tag);
    const strandTypeId = strand === "" ? usualId : strands.get(strand.toLowerCase());
    if (poleId === undefined) {
      refuse("tag", tag, "There is no pole with this tag in the route.", "the tag of a pole already imported");
      continue;
    }
    if (strandTypeId === undefined) {
      const names = [...route.strandType.values()].map((one) => one.name).join(", ");
      refuse("strand", strand, "The catalogue has no strand of this name.", names);
      continue;
    }
    const key = guyKey({ poleId, ...columns });
    const earlier = firstLine.get(key);
    if (earlier !== undefined) {
      const what = `The same guy is already on ${table.lineWord} ${earlier}.`;
      refuse("tag", tag, what, "each guy once, in a direction of its own");
      continue;
    }
    firstLine.set(key, fileLine);
    const before = present.get(key) ?? null;
    if (before && request.onExisting === "skip") {
      skippedCount += 1;
      continue;
    }
    const after: Guy = { ...columns, id: before?.id ?? nextId(), poleId, strandTypeId };
    rows.push({ table: "guy", id: after.id, before, after });
  }
  const counts = countRows(rows, "guy");
  return ok({ rows, ...counts, skippedCount, spanCount: 0, bad, notes: read.notes, spansForReview: [] });
}

function guyKey({ poleId, directionRad }: Pick<Guy, "poleId" | "directionRad">): string {
  return JSON.stringify([poleId, ((Math.round(degFromRad(directionRad)) % 360) + 360) % 360]);
}

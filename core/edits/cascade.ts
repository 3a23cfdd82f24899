import { inWriteOrder } from "../layout/rowSet.ts";
import { references } from "../model/references.ts";
import { fail, ok, type Result } from "../model/result.ts";
import type { RowChange } from "../model/rowChange.ts";
import { type Row, type TableName, tableNames, tables } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { rowEdit } from "./tableRow.ts";
import { rowTag } from "./tags.ts";

/** A row to take away. */
export type Doomed = { readonly table: TableName; readonly id: string };

/**
 * The edit that takes rows away with what hangs on them.
 *
 * A row that must name a doomed one goes too; one that may name nothing lets go of it. Two kinds go although they could let go,
 * since they would mean nothing alone: a coil with its terminal, and a fiber's use with the terminal, splitter, closure or lateral
 * it leads to.
 *
 * @returns a fault where the settings lean on one of the rows, or a row is not there
 */
export function removalOf(plant: Plant, rows: readonly Doomed[]): Result<RowChange[]> {
  const doomed = new Map<string, Doomed>();
  const loosened = new Map<string, RowChange>();
  const waiting = [...rows];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const key = `${next.table} ${next.id}`;
    if (doomed.has(key)) continue;
    if (next.table === "settings") return inUse(rows[0]?.id ?? "");
    if (next.table === "revision")
      return fail(
        "issued",
        "What was issued stays on record.",
        rowTag(plant.route(), "revision", next.id),
        "Void the revision, with a reason.",
      );
    if (!plant.row(next.table, next.id))
      return fail(
        "missing-row",
        `There is no such ${next.table}.`,
        next.id,
        "Look at the present state and choose again.",
      );
    doomed.set(key, next);
    for (const leaning of leaningOn(plant, next)) {
      if (leaning.goesToo) waiting.push(leaning);
      else letGo(plant, leaning, loosened);
    }
  }
  const kept = [...loosened].filter(([key]) => !doomed.has(key)).map(([, row]) => row);
  const gone = [...doomed.values()].map(({ table, id }) => rowEdit(table, plant.rowOf(table, id), null));
  return ok(inWriteOrder([...kept, ...gone]));
}

type Leaning = Doomed & { readonly column: string; readonly goesToo: boolean };

function leaningOn(plant: Plant, { table: target, id: targetId }: Doomed): Leaning[] {
  return tableNames.flatMap((table) =>
    Object.entries<TableName>(references[table])
      .filter(([, to]) => to === target)
      .flatMap(([column]) =>
        idsWhere(plant, table, column, targetId).map((id) => ({
          table,
          id,
          column,
          goesToo: !mayBeNull(table, column) || meansNothingAlone(plant, table, id, column),
        })),
      ),
  );
}

function idsWhere<T extends TableName>(plant: Plant, table: T, column: string, value: string): readonly string[] {
  return plant.where(table, column as keyof Row<T> & string, value); // the references table names columns of its rows
}

function mayBeNull(table: TableName, column: string): boolean {
  const field = Object.entries(tables[table].shape).find(([name]) => name === column)?.[1];
  return field?.safeParse(null).success ?? false;
}

function meansNothingAlone(plant: Plant, table: TableName, id: string, column: string): boolean {
  if (table === "slack") return column === "terminalId";
  if (table !== "fiberUse" || column === "feedId") return false;
  return column !== "closureId" || plant.rowOf("fiberUse", id).purpose === "lateral";
}

function letGo(plant: Plant, { table, id, column }: Leaning, loosened: Map<string, RowChange>): void {
  const key = `${table} ${id}`;
  const before = plant.rowOf(table, id);
  const present = loosened.get(key)?.after ?? before;
  loosened.set(key, rowEdit(table, before, { ...present, [column]: null }));
}

function inUse(id: string): Result<RowChange[]> {
  return fail("in-use", "The settings of the route lean on this row.", id, "Choose another one in the settings first.");
}

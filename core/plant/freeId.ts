import type { TableName } from "../model/tables.ts";
import type { Plant } from "./plant.ts";

/** An id no row of the table has: the one wanted, else the same with the next number behind it. */
export function freeId(plant: Plant, table: TableName, wanted: string): string {
  let id = wanted;
  for (let count = 2; plant.row(table, id); count += 1) id = `${wanted}-${count}`;
  return id;
}

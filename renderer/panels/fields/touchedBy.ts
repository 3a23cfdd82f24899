import { references } from "../../../core/model/references.ts";
import { type TableName, tableNames } from "../../../core/model/tables.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { type RefKey, refKey } from "../../app/ref.ts";

/** Tables whose rows stand on the route; catalogues and settings are not touched, they are leaned on. */
const standing: ReadonlySet<TableName> = new Set([
  "pole",
  "span",
  "crossing",
  "guy",
  "structure",
  "groundPoint",
  "strandSection",
  "cable",
  "slack",
  "closure",
  "terminal",
  "livingUnit",
  "drop",
]);

/** Rows a row names and rows that name it, each once, kind by kind. */
export function touchedBy(plant: Plant, table: TableName, id: string): readonly RefKey[] {
  const row = plant.row(table, id);
  if (!row) return [];
  const named = Object.entries<TableName>(references[table]).flatMap(([column, target]) => {
    const other: unknown = Reflect.get(row, column);
    return typeof other === "string" ? [refKey(target, other)] : [];
  });
  const naming = tableNames.flatMap((other) =>
    Object.entries<TableName>(references[other])
      .filter(([, target]) => target === table)
      .flatMap(([column]) => idsNaming(plant, other, column, id).map((one) => refKey(other, one))),
  );
  return [...new Set([...named, ...naming])].filter(
    (ref) => standing.has(splitTable(ref)) && ref !== refKey(table, id),
  );
}

function idsNaming(plant: Plant, table: TableName, column: string, id: string): readonly string[] {
  // the column comes from the table of references, which names columns of that very table
  return plant.where(table, column as "id", id);
}

function splitTable(ref: RefKey): TableName {
  const cut = ref.slice(0, ref.indexOf("/"));
  return tableNames.find((one) => one === cut) ?? "settings";
}

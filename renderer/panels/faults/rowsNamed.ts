import { tableNames } from "../../../core/model/tables.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { type RefKey, refKey } from "../../app/ref.ts";
import { catalogueWords, columnName } from "../../settings/words.ts";
import { titleOf } from "../words.ts";

type Named = { readonly id: string; readonly ref: RefKey };

/** Rows of the route whose ids stand in what a fault says it is about. */
export function rowsNamed(plant: Plant, where: string): readonly Named[] {
  return where.split(/[\s,;]+/).flatMap((id) => {
    const table = tableNames.find((name) => plant.row(name, id));
    return table && table !== "settings" ? [{ id, ref: refKey(table, id) }] : [];
  });
}

/** What a fault is about, with rows and columns called as people call them: "Terminal T-3, port 4" for "terminal-3, port 4". */
export function whereWords(plant: Plant, where: string): string {
  return where
    .split(", ")
    .map((part) => {
      const [named] = rowsNamed(plant, part);
      if (named) return titleOf(plant, named.ref);
      return Object.entries(catalogueWords).find(([table]) => table === part)?.[1] ?? columnName(part);
    })
    .join(", ");
}

import { builtUndrawnStrand } from "../closeout/builtFigures.ts";
import { builtRow } from "../closeout/builtPlant.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import { openPlant } from "../plant/plant.ts";
import { rowEdit } from "./tableRow.ts";

/**
 * What sets the route as built apart from the design: terminals moved to the offsets read, coils, heights and ports as read, and the strand of poles
 * that were drawn without one. A reading the design cannot take stays out: `readingUndrawn` tells it.
 */
export function asBuiltRows(route: Route): readonly RowChange[] {
  const plant = openPlant(route);
  const changed = (["attachment", "terminal", "slack", "drop"] as const).flatMap((table) =>
    [...route[table].keys()].flatMap((id) => {
      const [drawn, built] = [plant.rowOf(table, id), builtRow(plant, table, id)];
      return built && built !== drawn ? [rowEdit(table, drawn, built)] : [];
    }),
  );
  const undrawn = [...route.pole.keys()].flatMap((id) => builtUndrawnStrand(plant, id) ?? []);
  return [...changed, ...undrawn.map((strand) => rowEdit("attachment", null, strand))];
}

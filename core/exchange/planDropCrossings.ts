import type { Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { ImportRequest, PlannedRows } from "./importPlan.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { planRows } from "./planRows.ts";
import { readDropCrossings } from "./readDropCrossings.ts";
import { addressKey } from "./unitAddress.ts";

/** What a file of things under drops would do to a route; one is already there where living unit, surface and place are the same. */
export function planDropCrossings(route: Route, request: ImportRequest, map: ColumnMap): Result<PlannedRows> {
  const { table, options = {} } = request;
  const units = new Map([...route.livingUnit.values()].map(({ id, address }) => [addressKey(address), id]));
  return planRows(route, request, map, readDropCrossings(table, map, options), {
    table: "dropCrossing",
    place({ fileLine: _line, address, ...columns }, refuse) {
      const livingUnitId = units.get(addressKey(address));
      if (livingUnitId !== undefined) return { ...columns, livingUnitId };
      const what = "There is no living unit with this address in the route.";
      refuse("address", address, what, "the address of a living unit already imported");
      return null;
    },
    keyOf: ({ livingUnitId, surface, fromUnitM }) =>
      JSON.stringify([livingUnitId, surface, Math.round(fromUnitM * 100)]),
    refuseTwin({ address }, earlierLine, refuse) {
      const what = `The same thing under this drop is already on ${table.lineWord} ${earlierLine}.`;
      refuse("address", address, what, "each thing under a drop once");
    },
  });
}

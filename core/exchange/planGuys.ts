import type { Result } from "../model/result.ts";
import { type Route, settingsOf } from "../model/route.ts";
import type { Guy } from "../model/tables.ts";
import { degFromRad } from "../units/angle.ts";
import type { ImportRequest, PlannedRows } from "./importPlan.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { planRows } from "./planRows.ts";
import { readGuys } from "./readGuys.ts";

/** What a file of guys would do to a route; one is already there where pole and direction, to the degree, are the same. */
export function planGuys(route: Route, request: ImportRequest, map: ColumnMap): Result<PlannedRows> {
  const { table, options = {} } = request;
  const { unitSystem, strandTypeId: usualId } = settingsOf(route);
  const poles = new Map([...route.pole.values()].map((pole) => [pole.tag, pole.id]));
  const strands = new Map([...route.strandType.values()].map(({ id, name }) => [name.toLowerCase(), id]));
  return planRows(route, request, map, readGuys(table, map, options, unitSystem), {
    table: "guy",
    place({ fileLine: _line, tag, strand, ...columns }, refuse) {
      const poleId = poles.get(tag);
      const strandTypeId = strand === "" ? usualId : strands.get(strand.toLowerCase());
      if (poleId === undefined) {
        refuse("tag", tag, "There is no pole with this tag in the route.", "the tag of a pole already imported");
        return null;
      }
      if (strandTypeId === undefined) {
        const names = [...route.strandType.values()].map((one) => one.name).join(", ");
        refuse("strand", strand, "The catalogue has no strand of this name.", names);
        return null;
      }
      return { ...columns, poleId, strandTypeId };
    },
    keyOf: guyKey,
    refuseTwin({ tag }, earlierLine, refuse) {
      const what = `The same guy is already on ${table.lineWord} ${earlierLine}.`;
      refuse("tag", tag, what, "each guy once, in a direction of its own");
    },
  });
}

function guyKey({ poleId, directionRad }: Pick<Guy, "poleId" | "directionRad">): string {
  return JSON.stringify([poleId, ((Math.round(degFromRad(directionRad)) % 360) + 360) % 360]);
}

import type { Plant } from "../plant/plant.ts";
import { terminalHang } from "../plant/terminalView.ts";
import type { PresentLayout } from "./presentLayout.ts";
import type { Site } from "./sites.ts";
import type { PlacedUnit } from "./unitOrder.ts";

/**
 * Who is served from where now, for the search to better: by unit the number of its site, -1 where none serves it.
 *
 * A terminal that may be laid anew counts for the place on its side of its pole.
 */
export function keptPlaces(
  plant: Plant,
  { relaid }: Pick<PresentLayout, "relaid">,
  sites: readonly Site[],
  units: readonly PlacedUnit[],
): Int32Array {
  const siteOf = new Map(sites.map((site, number) => [site.terminalId ?? `${site.spanId} ${site.poleId}`, number]));
  const servedFrom = new Map(
    relaid.drop.map(({ livingUnitId, terminalId }) => {
      const side = `${plant.rowOf("terminal", terminalId).spanId} ${terminalHang(plant, terminalId).poleId}`;
      return [livingUnitId, siteOf.get(terminalId) ?? siteOf.get(side) ?? -1];
    }),
  );
  return Int32Array.from(units, ({ unit }) => servedFrom.get(unit.id) ?? -1);
}

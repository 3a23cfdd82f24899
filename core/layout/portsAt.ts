import type { Drop } from "../model/tables.ts";
import { spanBearingRad } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { reservedPorts, terminalHang } from "../plant/terminalView.ts";
import { assignPorts } from "./assignPorts.ts";

/**
 * Drops hung on one terminal, each on a port so that none crosses another.
 *
 * @param hung  drops to hang, wherever they are now
 * @param held  drops that keep their ports there
 * @returns the rows of `hung`, in their order; those beyond the last free port are left out
 */
export function portsAt(plant: Plant, terminalId: string, hung: readonly Drop[], held: readonly Drop[]): Drop[] {
  const { terminalModelId, spanId } = plant.rowOf("terminal", terminalId);
  const unitOf = (drop: Drop) => plant.rowOf("livingUnit", drop.livingUnitId);
  const given = assignPorts(
    plant,
    terminalModelId,
    terminalHang(plant, terminalId),
    spanBearingRad(plant, spanId),
    // By the drop, not by the unit: a unit may have two.
    hung.map((drop) => ({ ...unitOf(drop), id: drop.id })),
    held.map((drop) => ({ port: drop.port, unit: unitOf(drop) })),
    reservedPorts(plant, terminalId),
  );
  const portOf = new Map(given.map((one) => [one.livingUnitId, one.port]));
  return hung.flatMap((drop) => {
    const port = portOf.get(drop.id);
    return port === undefined ? [] : { ...drop, terminalId, port };
  });
}

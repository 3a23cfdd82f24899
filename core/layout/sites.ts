import type { TerminalModel } from "../model/tables.ts";
import type { Point } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { terminalPlace } from "../plant/terminalView.ts";
import { hangingPoints, type RefusedPoint, type Stays } from "./hangingPoints.ts";

/** Where a terminal hangs or may hang: the free side of a pole, or a terminal that stays. */
export type Site = Point & {
  readonly cableId: string;
  readonly spanId: string;
  readonly poleId: string;
  readonly offsetM: number;
  readonly stationM: number;
  /** Terminal that stays here; null where a new one would hang. */
  readonly terminalId: string | null;
  /** The cheapest way to hold n units here, at index n; index 0 is to hang nothing. */
  readonly loads: readonly { readonly terminalModelId: string | null; readonly cost: number }[];
};

/**
 * Every place of a layout along some cables, each cable's from its feed end.
 *
 * A side of a pole that two cables pass is offered once, to the first of them.
 *
 * @param freePortCount ports a terminal that stays has left to give
 * @param models        those that may be hung
 */
export function sitesAlong(
  plant: Plant,
  cableIds: readonly string[],
  stays: Stays,
  freePortCount: (terminalId: string) => number,
  models: readonly TerminalModel[] = plant.all("terminalModel").map((id) => plant.rowOf("terminalModel", id)),
): { readonly sites: readonly Site[]; readonly refused: readonly RefusedPoint[] } {
  const offered = new Set<string>();
  const refused: RefusedPoint[] = [];
  const sites = cableIds.flatMap((cableId) => {
    const points = hangingPoints(plant, cableId, stays);
    refused.push(...points.refused);
    const free = points.usable
      .filter((one) => !offered.has(`${one.spanId} ${one.poleId}`))
      .map(({ roomM, ...place }): Site => ({ ...place, terminalId: null, loads: cheapestLoads(plant, models, roomM) }));
    for (const one of free) offered.add(`${one.spanId} ${one.poleId}`);
    return [...free, ...staying(plant, cableId, stays, freePortCount)].sort((a, b) => a.stationM - b.stationM);
  });
  return { sites, refused };
}

/** Terminals that stay cost nothing more, so they fill first; what their model is does not change. */
function staying(plant: Plant, cableId: string, stays: Stays, freePortCount: (terminalId: string) => number): Site[] {
  return plant
    .where("terminal", "cableId", cableId)
    .filter(stays)
    .map((id) => {
      const { spanId, offsetM, terminalModelId } = plant.rowOf("terminal", id);
      const { poleId, stationM, eastM, northM } = terminalPlace(plant, id);
      const loads = Array.from({ length: freePortCount(id) + 1 }, () => ({ terminalModelId, cost: 0 }));
      return { cableId, spanId, poleId, offsetM, stationM: stationM ?? 0, eastM, northM, terminalId: id, loads };
    });
}

function cheapestLoads(plant: Plant, models: readonly TerminalModel[], roomM: number): Site["loads"] {
  const { sparePortCount } = plant.settings();
  const fitting = models.filter((one) => one.lengthM <= roomM && one.portCount > sparePortCount);
  const most = Math.max(0, ...fitting.map((one) => one.portCount - sparePortCount));
  return Array.from({ length: most + 1 }, (_, load) => {
    if (load === 0) return { terminalModelId: null, cost: 0 };
    const [first, ...others] = fitting.filter((one) => one.portCount - sparePortCount >= load);
    const least = others.reduce((best, one) => (best && isCheaper(one, best) ? one : best), first);
    return { terminalModelId: least?.id ?? null, cost: least?.cost ?? Number.POSITIVE_INFINITY };
  });
}

function isCheaper(one: TerminalModel, than: TerminalModel): boolean {
  return one.cost < than.cost || (one.cost === than.cost && one.portCount > than.portCount);
}

import type { LivingUnit } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { contiguousProgram, type Facility } from "./contiguousProgram.ts";
import type { Stays } from "./hangingPoints.ts";
import { openNearIndex } from "./nearIndex.ts";
import { type Unserved, whyNotFirst, whyUnserved } from "./placementReasons.ts";
import { serveLeftovers } from "./serveLeftovers.ts";
import { type Site, sitesAlong } from "./sites.ts";
import { type PlacedUnit, unitOrder } from "./unitOrder.ts";

/** A terminal of the layout and the units it serves. */
export type PlacedTerminal = {
  readonly site: Site;
  readonly terminalModelId: string;
  readonly units: readonly LivingUnit[];
  /** Why it hangs here and not at the first choice; empty where this is the first choice. */
  readonly reason: string;
};

export type Placement = {
  /** Cable by cable, each from its feed end. */
  readonly placed: readonly PlacedTerminal[];
  readonly unserved: readonly Unserved[];
};

/**
 * Hangs terminals along cables and gives every unit in reach to one of them where there is room.
 *
 * @param cableIds      cables to hang on, from the hub outwards
 * @param units         units to serve; those with a decided drop are not among them
 * @param stays         whether a terminal that is there now stays
 * @param freePortCount ports a terminal that stays has left for these units
 */
export function placeTerminals(
  plant: Plant,
  cableIds: readonly string[],
  units: readonly LivingUnit[],
  stays: Stays,
  freePortCount: (terminalId: string) => number,
): Placement {
  const { dropReachM } = plant.settings();
  const { sites, refused: points } = sitesAlong(plant, cableIds, stays, freePortCount);
  const refused = { points, near: openNearIndex(points, dropReachM).near };
  const nearSites = openNearIndex(sites, dropReachM);
  const ordered = unitOrder(plant, cableIds, units, sites, nearSites);
  const facilities = facilitiesOf(plant, sites, ordered);
  const chosen = serveLeftovers(chooseByCable(cableIds, sites, ordered, facilities), facilities);

  const held: LivingUnit[][] = sites.map(() => []);
  const served = new Set<string>();
  ordered.forEach(({ unit }, position) => {
    const load = held[chosen[position] ?? -1];
    if (!load) return;
    load.push(unit);
    served.add(unit.id);
  });
  return {
    placed: sites.flatMap((site, position) => {
      const load = held[position] ?? [];
      const terminalModelId = site.loads[load.length]?.terminalModelId ?? null;
      if (terminalModelId === null) return [];
      const reason = site.terminalId === null ? whyNotFirst(plant, site, load, refused) : "";
      return [{ site, terminalModelId, units: load, reason }];
    }),
    unserved: units
      .filter((unit) => !served.has(unit.id))
      .map((unit) => whyUnserved(plant, unit, nearSites.near(unit).length > 0, refused)),
  };
}

function facilitiesOf(plant: Plant, sites: readonly Site[], ordered: readonly PlacedUnit[]): Facility[] {
  const { dropReachM, dropAllowanceM, dropTypeId } = plant.settings();
  const { costPerM, costEach } = plant.rowOf("dropType", dropTypeId);
  const nearUnits = openNearIndex(
    ordered.map((one) => one.unit),
    dropReachM,
  );
  return sites.map((site) => ({
    arcs: nearUnits.near(site).map(({ index, distanceM }) => ({
      unit: index,
      cost: costEach + costPerM * (distanceM + dropAllowanceM),
    })),
    openCosts: site.loads.map((one) => one.cost),
  }));
}

/** The contiguous program cable by cable, each over the units that lie nearest to it. */
function chooseByCable(
  cableIds: readonly string[],
  sites: readonly Site[],
  ordered: readonly PlacedUnit[],
  facilities: readonly Facility[],
): number[] {
  const chosen: number[] = [];
  for (const cableId of cableIds) {
    const first = chosen.length;
    let end = first;
    while (ordered[end]?.cableId === cableId) end += 1;
    const own = facilities.flatMap((facility, position) =>
      sites[position]?.cableId === cableId ? [{ facility, position }] : [],
    );
    const local = own.map(({ facility }) => ({
      openCosts: facility.openCosts,
      arcs: facility.arcs
        .filter((arc) => arc.unit >= first && arc.unit < end)
        .map((arc) => ({ unit: arc.unit - first, cost: arc.cost })),
    }));
    for (const index of contiguousProgram(end - first, local)) chosen.push(own[index]?.position ?? -1);
  }
  return chosen;
}

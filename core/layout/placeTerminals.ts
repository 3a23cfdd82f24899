import type { LivingUnit, TerminalModel } from "../model/tables.ts";
import type { LimitedWatch } from "../placement/limitedWatch.ts";
import type { Watch } from "../placement/problem.ts";
import { solvePlacement } from "../placement/solvePlacement.ts";
import type { Plant } from "../plant/plant.ts";
import { keptPlaces } from "./keptPlaces.ts";
import { openNearIndex } from "./nearIndex.ts";
import { type Unserved, whyNotFirst, whyUnserved } from "./placementReasons.ts";
import type { PresentLayout } from "./presentLayout.ts";
import { siteProblem } from "./siteProblem.ts";
import { type Site, sitesAlong } from "./sites.ts";
import { unitOrder } from "./unitOrder.ts";

/** Who watches the search for a layout, and keeps it to its limits; null where it is to be done in a moment, before the proof. */
export type Search = LimitedWatch | null;

const unwatched: Watch = { elapsedS: () => 0, stopped: () => false };

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
  /** Proven: no choice of places and terminals serves as many of these units for less. */
  readonly costBound: number;
  /** Whether the cost is as low as it can be. */
  readonly isProven: boolean;
};

/**
 * Hangs terminals along cables and gives every unit in reach to one of them where there is room.
 *
 * The search starts from what hangs there now, as far as it still may; of two layouts that cost the same that one stays.
 *
 * @param cableIds      cables to hang on, from the hub outwards
 * @param units         units to serve; those with a decided drop are not among them
 * @param stays         whether a terminal that is there now stays
 * @param relaid        what hangs there now and gives way only to what costs less
 * @param models        terminal models that may be hung
 * @param freePortCount ports a terminal that stays has left for these units; they cost nothing more, so they fill first
 */
export function placeTerminals(
  plant: Plant,
  { cableIds, units, stays, relaid }: Pick<PresentLayout, "cableIds" | "units" | "stays" | "relaid">,
  models: readonly TerminalModel[],
  freePortCount: (terminalId: string) => number,
  search: Search,
): Placement {
  const { dropReachM } = plant.settings();
  const { sites, refused: points } = sitesAlong(plant, cableIds, stays, freePortCount, models);
  const refused = { points, near: openNearIndex(points, dropReachM).near };
  const nearSites = openNearIndex(sites, dropReachM);
  const ordered = unitOrder(plant, cableIds, units, sites, nearSites);
  const kept = keptPlaces(plant, { relaid }, sites, ordered);
  const options = { gap: 0, seed: 1, isQuick: search === null, kept };
  const solved = solvePlacement(siteProblem(plant, sites, ordered), search ?? unwatched, options);
  const full = new Map(solved.unserved.map(({ unit, reason }) => [ordered[unit]?.unit.id, reason]));

  const near = (unit: LivingUnit) => nearSites.near(unit).flatMap(({ index }) => sites[index] ?? []);
  const held: LivingUnit[][] = sites.map(() => []);
  const served = new Set<string>();
  ordered.forEach(({ unit }, position) => {
    const load = held[solved.pointOf[position] ?? -1];
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
      .map((unit) => whyUnserved(plant, unit, { sites: near(unit), full: full.get(unit.id) ?? "" }, refused)),
    costBound: solved.bound,
    isProven: solved.bound >= solved.cost,
  };
}

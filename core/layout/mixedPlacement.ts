import type { LivingUnit } from "../model/tables.ts";
import { forbiddenOver, passingCost } from "../plant/dropPassing.ts";
import { planeDistanceM } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { terminalPlace } from "../plant/terminalView.ts";
import { openNearIndex } from "./nearIndex.ts";
import { whyUnserved } from "./placementReasons.ts";
import type { PlacedTerminal, Placement } from "./placeTerminals.ts";
import type { PresentLayout } from "./presentLayout.ts";
import { type Site, sitesAlong } from "./sites.ts";

/** Another layout of the route, and the poles at which it is to take the place of the present one. */
export type Mix = { readonly other: readonly PlacedTerminal[]; readonly poleIds: readonly string[] };

/** A place with what hangs there in the mixture. */
type Held = {
  readonly site: Site;
  terminalModelId: string | null;
  readonly units: LivingUnit[];
  readonly reason: string;
};

/**
 * The present layout with another's at a run of poles: what hangs there and whom it serves is the other's, all else as it is.
 *
 * Whom neither serves any more, because the other served them from beyond the run, goes where it costs least more; what serves nobody
 * any more goes. Nothing is proven of such a mixture.
 */
export function mixedPlacement(
  plant: Plant,
  present: PresentLayout,
  mix: Mix,
  freePortCount: (terminalId: string) => number,
): Placement {
  const inRun = new Set(mix.poleIds);
  const { sites, refused: points } = sitesAlong(plant, present.cableIds, present.stays, freePortCount);
  const desk = sites.map((site): Held => ({ site, terminalModelId: null, units: [], reason: "" }));
  const heldAt = new Map(desk.map((held) => [placeKey(held.site), held]));
  const left = new Map(present.units.map((unit) => [unit.id, unit]));
  const hang = (one: Hung): void => {
    const held = heldAt.get(placeKey(one.site)) ?? {
      site: one.site,
      terminalModelId: null,
      units: [],
      reason: one.reason,
    };
    if (!heldAt.has(placeKey(one.site))) desk.push(held);
    heldAt.set(placeKey(one.site), held);
    held.terminalModelId ??= one.terminalModelId;
    for (const id of one.unitIds) {
      const unit = left.get(id);
      if (!unit || held.units.length >= roomOf(plant, held, freePortCount)) continue;
      held.units.push(unit);
      left.delete(id);
    }
  };
  for (const { site, terminalModelId, units, reason } of mix.other)
    if (inRun.has(site.poleId)) hang({ site, terminalModelId, unitIds: units.map((one) => one.id), reason });
  for (const one of hungNow(plant, present)) if (!inRun.has(one.site.poleId)) hang(one);

  const { dropReachM } = plant.settings();
  const near = openNearIndex(
    desk.map((held) => held.site),
    dropReachM,
  );
  for (const unit of left.values()) {
    const here = near.near(unit).flatMap(({ index }) => desk[index] ?? []);
    const free = here.filter((held) => held.terminalModelId !== null || !isTaken(desk, held));
    const best = cheapestFor(plant, unit, free, freePortCount);
    if (!best) continue;
    best.held.terminalModelId = best.terminalModelId;
    best.held.units.push(unit);
    left.delete(unit.id);
  }
  const rank = new Map(present.cableIds.map((id, position) => [id, position]));
  const refused = { points, near: openNearIndex(points, dropReachM).near };
  return {
    placed: desk
      .flatMap(({ site, terminalModelId, units, reason }) =>
        terminalModelId === null || units.length === 0 ? [] : [{ site, terminalModelId, units, reason }],
      )
      .sort(
        (a, b) =>
          (rank.get(a.site.cableId) ?? 0) - (rank.get(b.site.cableId) ?? 0) || a.site.stationM - b.site.stationM,
      ),
    unserved: [...left.values()].map((unit) => {
      const within = near.near(unit).flatMap(({ index }) => desk[index]?.site ?? []);
      return whyUnserved(plant, unit, { sites: within, full: "it was served from beyond the run before" }, refused);
    }),
    costBound: 0,
    isProven: false,
  };
}

type Hung = {
  readonly site: Site;
  readonly terminalModelId: string;
  readonly unitIds: readonly string[];
  readonly reason: string;
};

/** What hangs now and may be laid anew, and what stays with the units it may be given. */
function hungNow(plant: Plant, present: PresentLayout): Hung[] {
  const unitsAt = new Map<string, string[]>();
  for (const { terminalId, livingUnitId } of present.relaid.drop)
    unitsAt.set(terminalId, [...(unitsAt.get(terminalId) ?? []), livingUnitId]);
  return plant.all("terminal").flatMap((id): Hung[] => {
    const { cableId, spanId, offsetM, terminalModelId, reason } = plant.rowOf("terminal", id);
    if (!present.cableIds.includes(cableId)) return [];
    const { poleId, eastM, northM, stationM } = terminalPlace(plant, id);
    const terminalId = present.stays(id) ? id : null;
    const site = { eastM, northM, cableId, spanId, poleId, offsetM, stationM: stationM ?? 0, terminalId, loads: [] };
    return [{ site, terminalModelId, unitIds: unitsAt.get(id) ?? [], reason }];
  });
}

/** Units a place holds with the model that hangs there. */
function roomOf(plant: Plant, { site, terminalModelId }: Held, freePortCount: (id: string) => number): number {
  if (site.terminalId !== null) return freePortCount(site.terminalId);
  if (terminalModelId === null) return 0;
  return plant.rowOf("terminalModel", terminalModelId).portCount - plant.settings().sparePortCount;
}

function cheapestFor(plant: Plant, unit: LivingUnit, near: readonly Held[], freePortCount: (id: string) => number) {
  const { dropTypeId } = plant.settings();
  const { costPerM } = plant.rowOf("dropType", dropTypeId);
  let best: { readonly held: Held; readonly terminalModelId: string; readonly cost: number } | null = null;
  for (const held of near) {
    if (forbiddenOver(plant, held.site, unit)) continue;
    const { terminalModelId, units, site } = held;
    const hasRoom = terminalModelId !== null && units.length < roomOf(plant, held, freePortCount);
    const load = site.terminalId === null ? site.loads[units.length + 1] : undefined;
    const next = hasRoom ? terminalModelId : (load?.terminalModelId ?? null);
    if (next === null) continue;
    const was = terminalModelId === null ? 0 : plant.rowOf("terminalModel", terminalModelId).cost;
    const more = hasRoom ? 0 : plant.rowOf("terminalModel", next).cost - was;
    const cost = more + costPerM * planeDistanceM(site, unit) + passingCost(plant, site, unit);
    if (!best || cost < best.cost) best = { held, terminalModelId: next, cost };
  }
  return best;
}

/** Whether something hangs on the same side of the same pole, only not just there. */
function isTaken(desk: readonly Held[], { site }: Held): boolean {
  return desk.some(
    (one) => one.terminalModelId !== null && one.site.spanId === site.spanId && one.site.poleId === site.poleId,
  );
}

function placeKey({ spanId, offsetM }: Site): string {
  return `${spanId} ${offsetM.toFixed(3)}`;
}

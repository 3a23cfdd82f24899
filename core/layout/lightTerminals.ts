import type { Plant } from "../plant/plant.ts";
import { splittersOf } from "../plant/terminalView.ts";
import { assignFibers, type FiberNeed, type FiberPlan, type ShortCable } from "./assignFibers.ts";
import { smallestCableFor } from "./cableFit.ts";
import type { FedTerminal } from "./chainTaps.ts";
import type { Unserved } from "./placementReasons.ts";
import type { PresentLayout } from "./presentLayout.ts";

/** The terminals that can be lit, their fibers, and the units that lost their terminal because a cable is too small. */
export type LitTerminals = {
  readonly placed: readonly FedTerminal[];
  readonly plan: FiberPlan;
  /** Fibers asked of each cable, opening by opening from the far end, before any terminal was given up. */
  readonly asked: FiberPlan["openings"];
  readonly unserved: readonly Unserved[];
};

/**
 * Gives fibers to the placed terminals; where a cable has too few, gives up the new terminals nearest its feed end.
 *
 * The plan calls a terminal by its position among the placed ones given back.
 */
export function lightTerminals(plant: Plant, present: PresentLayout, placed: readonly FedTerminal[]): LitTerminals {
  const lit = new Set(present.fixedUses.flatMap((one) => one.terminalId ?? []));
  const whole = planFor(plant, present, placed, lit);
  const unserved: Unserved[] = [];
  let kept = placed;
  let plan = whole;
  for (let lost = lostTo(plan, kept); lost.size > 0; lost = lostTo(plan, kept)) {
    for (const [terminal, short] of lost) {
      const reason = shortText(plant, present, whole, short);
      unserved.push(...terminal.units.map((unit) => ({ livingUnitId: unit.id, kind: "fibers" as const, reason })));
    }
    kept = kept.filter((one) => !lost.has(one));
    plan = planFor(plant, present, kept, lit);
  }
  return { placed: kept, plan, asked: whole.openings, unserved };
}

function planFor(
  plant: Plant,
  present: PresentLayout,
  placed: readonly FedTerminal[],
  lit: ReadonlySet<string>,
): FiberPlan {
  const needs = placed.flatMap(({ site, terminalModelId, chain }, position): FiberNeed[] => {
    if (site.terminalId !== null && lit.has(site.terminalId)) return [];
    const splitterCount =
      site.terminalId === null
        ? plant.rowOf("terminalModel", terminalModelId).splitterCount
        : splittersOf(plant, site.terminalId).length;
    return [{ key: String(position), cableId: site.cableId, stationM: site.stationM, splitterCount, chain }];
  });
  return assignFibers(plant, present.fiberCableIds, needs, present.fixedUses);
}

function lostTo(plan: FiberPlan, placed: readonly FedTerminal[]): ReadonlyMap<FedTerminal, ShortCable> {
  const lost = new Map<FedTerminal, ShortCable>();
  for (const short of plan.short) {
    for (const key of short.keys) {
      const terminal = placed[Number(key)];
      if (terminal && terminal.site.terminalId === null) lost.set(terminal, short);
    }
  }
  return lost;
}

function shortText(plant: Plant, present: PresentLayout, whole: FiberPlan, { cableId }: ShortCable): string {
  const cable = plant.rowOf("cable", cableId);
  const type = plant.rowOf("cableType", cable.cableTypeId);
  const openings = whole.openings.get(cableId) ?? [];
  const taken = new Set(present.fixedUses.filter((one) => one.cableId === cableId).map((one) => one.fiber));
  const fit = smallestCableFor(plant, openings, taken);
  const neededCount = openings.reduce((sum, count) => sum + count, taken.size);
  const mend = fit ? `the smallest that fits is ${fit.name}` : "no cable of the catalogue fits";
  return `Cable ${cable.name} has ${type.fiberCount} fibers for ${neededCount} and the spares of each tube; ${mend}.`;
}

import type { FiberUse } from "../model/tables.ts";
import { fiberToM } from "./fiberAlong.ts";
import { usesOfCable } from "./fiberView.ts";
import { defineQuery, defineSteadyQuery, type Plant } from "./plant.ts";
import { takingStationM, takingsBefore, throughLossDb } from "./taps.ts";

/** The way of one fiber back to the hub. */
export type FiberTrace =
  | {
      readonly kind: "known";
      /** Hub output that lights it. */
      readonly feedId: string;
      /** Fiber along the route, sag, coils and excess over the sheath included, m. */
      readonly fiberM: number;
      /**
       * Splices on the way, the one at its far end included, and one behind each tap; the joint at the cable's start belongs to the
       * feed.
       */
      readonly spliceCount: number;
      /** Taps passed on the way, and what they lose together, dB. */
      readonly tapCount: number;
      readonly tapDb: number;
    }
  | { readonly kind: "unknown"; readonly why: string };

/** The way of the fiber that a use takes out, from there back to the hub, through the parents of lateral cables. */
export const fiberTrace = defineQuery("fiber-trace", (plant, fiberUseId): FiberTrace => {
  const visited = new Set<string>();
  let fiberM = 0;
  let spliceCount = 0;
  let tapCount = 0;
  let tapDb = 0;
  let use: FiberUse | undefined = plant.rowOf("fiberUse", fiberUseId);
  while (use) {
    const cable = plant.rowOf("cable", use.cableId);
    if (visited.has(cable.id)) return unknown(`Cable ${cable.name} is fed from itself.`);
    visited.add(cable.id);
    const lengthM = fiberUseLengthM(plant, use.id);
    if (lengthM === null)
      return unknown(`Fiber ${use.fiber} of cable ${cable.name} is used where the cable does not pass.`);
    const taps = tapsPassed(plant, use.id);
    fiberM += lengthM;
    spliceCount += 1 + taps.count;
    tapCount += taps.count;
    tapDb += taps.lossDb;
    if (cable.fromClosureId === null) {
      if (use.feedId === null) return unknown(`Fiber ${use.fiber} of cable ${cable.name} has no hub output.`);
      return { kind: "known", feedId: use.feedId, fiberM, spliceCount, tapCount, tapDb };
    }
    const parent = parentUse(plant, use);
    if (!parent) return unknown(`Fiber ${use.fiber} of cable ${cable.name} is not spliced to the cable it comes from.`);
    use = parent;
  }
  return unknown("The fiber leads nowhere.");
});

/** Hub output at the end of the way of a use's fiber; null where the way is broken. */
export const feedOfUse = defineSteadyQuery("feed-of-use", (plant, fiberUseId): string | null => {
  const trace = fiberTrace(plant, fiberUseId);
  return trace.kind === "known" ? trace.feedId : null;
});

/**
 * The use on the parent cable that is spliced to this fiber; undefined where there is none, or the cable comes from
 * the hub.
 */
export function parentUse(plant: Plant, use: Pick<FiberUse, "cableId" | "fiber">): FiberUse | undefined {
  const { fromClosureId } = plant.rowOf("cable", use.cableId);
  if (fromClosureId === null) return undefined;
  return plant
    .whereAll("fiberUse", { lateralCableId: use.cableId, lateralFiber: String(use.fiber) })
    .map((id) => plant.rowOf("fiberUse", id))
    .find((one) => one.purpose === "lateral" && one.closureId === fromClosureId);
}

/**
 * Where along its cable a use takes its fiber out, m from the feed end; null where that place is not on the cable or
 * not told.
 */
export const fiberUseStationM = defineSteadyQuery("use-station", (plant, fiberUseId): number | null => {
  const use = plant.rowOf("fiberUse", fiberUseId);
  return takingStationM(plant, use);
});

/** Taps that a use's fiber passes on its own cable before it gets there. */
const tapsPassed = defineQuery(
  "taps-passed",
  (plant, fiberUseId): { readonly count: number; readonly lossDb: number } => {
    const use = plant.rowOf("fiberUse", fiberUseId);
    const losses = takingsBefore(plant, use, rivalUses(plant, use)).flatMap((one) => throughLossDb(plant, one) ?? []);
    return { count: losses.length, lossDb: losses.reduce((sum, one) => sum + one, 0) };
  },
);

/** Other uses of the same fiber of the same cable, by id. */
export function rivalUses(plant: Plant, use: FiberUse): readonly FiberUse[] {
  return plant
    .whereAll("fiberUse", { cableId: use.cableId, fiber: String(use.fiber) })
    .filter((id) => id !== use.id)
    .map((id) => plant.rowOf("fiberUse", id));
}

/** Fibers of a cable that nothing uses, lowest first; of a lateral cable those only that its parent is spliced to. */
export const freeFibers = defineQuery("free-fibers", (plant, cableId): readonly number[] => {
  const cable = plant.rowOf("cable", cableId);
  const { fiberCount } = plant.rowOf("cableType", cable.cableTypeId);
  const used = new Set(usesOfCable(plant, cableId).map((id) => plant.rowOf("fiberUse", id).fiber));
  return Array.from({ length: fiberCount }, (_, index) => index + 1)
    .filter((fiber) => !used.has(fiber))
    .filter((fiber) => cable.fromClosureId === null || parentUse(plant, { cableId, fiber }) !== undefined);
});

const fiberUseLengthM = defineSteadyQuery("use-fiber", (plant, fiberUseId): number | null => {
  const use = plant.rowOf("fiberUse", fiberUseId);
  const place = placeOf(plant, use);
  return place ? fiberToM(plant, use.cableId, place.spanId, place.offsetM) : null;
});

function placeOf(plant: Plant, { terminalId, closureId }: FiberUse) {
  if (terminalId !== null) return plant.row("terminal", terminalId);
  return closureId === null ? undefined : plant.row("closure", closureId);
}

function unknown(why: string): FiberTrace {
  return { kind: "unknown", why };
}

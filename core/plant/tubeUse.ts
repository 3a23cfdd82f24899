import type { FiberUse } from "../model/tables.ts";
import { fiberUseStationM } from "./fiberTrace.ts";
import { usesOfCable } from "./fiberView.ts";
import { defineQuery } from "./plant.ts";

/** kept: one of the last fibers of a tube that stay free by the standard; free: nothing uses it. */
export type FiberState = FiberUse["purpose"] | "kept" | "free";

/** One fiber of a tube. */
export type TubeFiber = {
  /** Number in the cable, and place in its tube, both from 1. */
  readonly fiber: number;
  readonly place: number;
  readonly state: FiberState;
  readonly useIds: readonly string[];
};

/** Where a tube is opened down the cable. */
export type TubeOpening = {
  readonly table: "terminal" | "closure";
  readonly id: string;
  readonly name: string;
  /** From the cable's feed end, m. */
  readonly stationM: number;
  readonly places: readonly number[];
};

/** One buffer tube of a cable, its fibers in order, its openings from the feed end on. */
export type TubeUse = {
  readonly tube: number;
  readonly fibers: readonly TubeFiber[];
  readonly openings: readonly TubeOpening[];
};

/** The fibers of a cable, tube by tube. */
export const tubesOfCable = defineQuery("tubes-of-cable", (plant, cableId): readonly TubeUse[] => {
  const { fiberCount, fibersPerTube } = plant.rowOf("cableType", plant.rowOf("cable", cableId).cableTypeId);
  const { spareFiberPerTubeCount } = plant.settings();
  const uses = new Map<number, FiberUse[]>();
  for (const id of usesOfCable(plant, cableId)) {
    const use = plant.rowOf("fiberUse", id);
    uses.set(use.fiber, [...(uses.get(use.fiber) ?? []), use]);
  }
  return Array.from({ length: Math.ceil(fiberCount / fibersPerTube) }, (_, index): TubeUse => {
    const first = index * fibersPerTube + 1;
    const size = Math.min(fibersPerTube, fiberCount - first + 1);
    const openings = new Map<string, TubeOpening>();
    const fibers = Array.from({ length: size }, (_unused, at): TubeFiber => {
      const own = uses.get(first + at) ?? [];
      for (const use of own) {
        const stationM = fiberUseStationM(plant, use.id);
        const table = use.terminalId === null ? "closure" : "terminal";
        const id = use.terminalId ?? use.closureId;
        if (stationM === null || id === null) continue;
        const before = openings.get(id)?.places ?? [];
        openings.set(id, { table, id, name: plant.rowOf(table, id).name, stationM, places: [...before, at + 1] });
      }
      const unused = at >= size - spareFiberPerTubeCount ? "kept" : "free";
      return { fiber: first + at, place: at + 1, state: own[0]?.purpose ?? unused, useIds: own.map((one) => one.id) };
    });
    return { tube: index + 1, fibers, openings: [...openings.values()].sort((a, b) => a.stationM - b.stationM) };
  });
});

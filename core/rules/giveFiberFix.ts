import type { FiberUse } from "../model/tables.ts";
import { litFiberCount } from "../plant/feedView.ts";
import { freeFibers } from "../plant/fiberTrace.ts";
import { tubeOf, usesOfCable } from "../plant/fiberView.ts";
import type { Plant } from "../plant/plant.ts";
import type { Fix } from "./rule.ts";

/**
 * Another fiber for a use that feeds a splitter: a free one of the same tube, else the cable's first free one. No fix
 * for uses that feed no splitter, nor where no fiber is free.
 */
export function otherFiberFix(plant: Plant, use: FiberUse): readonly Fix[] {
  if (use.purpose !== "terminal" || use.splitterId === null || use.terminalId === null) return [];
  const fiber = freeFiber(plant, use.cableId, tubeOf(plant, use.cableId, use.fiber).tube);
  if (fiber === null) return [];
  const { id: fiberUseId, cableId, terminalId, splitterId, feedId } = use;
  return [
    {
      label: `Give terminal ${plant.rowOf("terminal", terminalId).name} fiber ${fiber} instead`,
      command: "fiber.give",
      input: { fiberUseId, cableId, fiber, terminalId, splitterId, feedId },
    },
  ];
}

/**
 * The fiber a splitter would get next: a free one of the wanted tube, else the cable's first free one.
 *
 * @param tube  from 1
 * @returns null where no fiber is free
 */
export function freeFiber(plant: Plant, cableId: string, tube: number): number | null {
  const free = freeFibers(plant, cableId);
  return free.find((fiber) => tubeOf(plant, cableId, fiber).tube === tube) ?? free[0] ?? null;
}

/**
 * A hub output already on a cable whose hub splitter has a leg left; null where none has, or the cable comes off
 * another.
 */
export function feedWithRoom(plant: Plant, cableId: string): string | null {
  const ids = usesOfCable(plant, cableId).flatMap((id) => plant.rowOf("fiberUse", id).feedId ?? []);
  const hasRoom = (id: string) => litFiberCount(plant, id) < plant.rowOf("feed", id).hubSplitCount;
  return [...new Set(ids)].find(hasRoom) ?? null;
}

import { freeId } from "../../core/plant/freeId.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { feedingUseId } from "../../core/plant/portLight.ts";
import { feedWithRoom } from "../../core/rules/giveFiberFix.ts";

/** The fiber that feeds a splitter now; null where none does. */
export function fiberOf(plant: Plant, splitterId: string): number | null {
  const useId = feedingUseId(plant, splitterId);
  return useId === null ? null : plant.rowOf("fiberUse", useId).fiber;
}

/**
 * What gives a fiber of a terminal's cable to one of its splitters. A fiber that a tap sends on keeps its hub output; another keeps the
 * splitter's, or takes one of the cable's with a leg left.
 *
 * @param fiber  number in the cable, from 1
 * @returns the input of fiber.give
 */
export function givenFiber(plant: Plant, splitterId: string, fiber: number): object {
  const { terminalId } = plant.rowOf("splitter", splitterId);
  const { cableId } = plant.rowOf("terminal", terminalId);
  const useId = feedingUseId(plant, splitterId);
  const before = useId === null ? null : plant.rowOf("fiberUse", useId);
  const [holder] = plant
    .whereAll("fiberUse", { cableId, fiber: String(fiber) })
    .filter((id) => id !== useId)
    .map((id) => plant.rowOf("fiberUse", id));
  const isFromHub = plant.rowOf("cable", cableId).fromClosureId === null;
  const feedId = isFromHub ? (holder?.feedId ?? before?.feedId ?? feedWithRoom(plant, cableId)) : null;
  const fiberUseId = useId ?? freeId(plant, "fiberUse", `fiber-${cableId}-${fiber}`);
  return { fiberUseId, cableId, fiber, terminalId, splitterId, feedId };
}

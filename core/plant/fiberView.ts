import { defineQuery, type Plant } from "./plant.ts";

/** Ids of the uses of one cable's fibers, by fiber then id. */
export const usesOfCable = defineQuery("uses-of-cable", (plant, cableId): readonly string[] =>
  plant
    .where("fiberUse", "cableId", cableId)
    .map((id) => plant.rowOf("fiberUse", id))
    .sort((a, b) => a.fiber - b.fiber || (a.id < b.id ? -1 : 1))
    .map((one) => one.id),
);

/** Ids of the fiber uses that feed a terminal, by fiber. */
export const usesOfTerminal = defineQuery("uses-of-terminal", (plant, terminalId): readonly string[] =>
  plant
    .where("fiberUse", "terminalId", terminalId)
    .map((id) => plant.rowOf("fiberUse", id))
    .sort((a, b) => a.fiber - b.fiber || (a.id < b.id ? -1 : 1))
    .map((one) => one.id),
);

/** Buffer tube and place in it, both from 1. */
export function tubeOf(
  plant: Plant,
  cableId: string,
  fiber: number,
): { readonly tube: number; readonly place: number } {
  const { fibersPerTube } = plant.rowOf("cableType", plant.rowOf("cable", cableId).cableTypeId);
  return { tube: Math.ceil(fiber / fibersPerTube), place: ((fiber - 1) % fibersPerTube) + 1 };
}

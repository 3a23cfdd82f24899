import { stationM } from "./cablePath.ts";
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

/** Where along its cable a fiber use takes the fiber out, m from the feed end; null where that place is not on the cable. */
export const useStationM = defineQuery("use-station", (plant, useId): number | null => {
  const use = plant.rowOf("fiberUse", useId);
  const place = placeOf(plant, use.terminalId, use.closureId);
  return place ? stationM(plant, use.cableId, place.spanId, place.offsetM) : null;
});

/** Buffer tube and place in it, both from 1. */
export function tubeOf(
  plant: Plant,
  cableId: string,
  fiber: number,
): { readonly tube: number; readonly place: number } {
  const { fibersPerTube } = plant.rowOf("cableType", plant.rowOf("cable", cableId).cableTypeId);
  return { tube: Math.ceil(fiber / fibersPerTube), place: ((fiber - 1) % fibersPerTube) + 1 };
}

function placeOf(plant: Plant, terminalId: string | null, closureId: string | null) {
  if (terminalId !== null) return plant.row("terminal", terminalId);
  return closureId === null ? undefined : plant.row("closure", closureId);
}

import type { FiberUse } from "../model/tables.ts";
import { stationM } from "./cablePath.ts";
import type { Plant } from "./plant.ts";

/** Where a use takes its fiber out, as far as its row tells. */
export type Taking = Pick<FiberUse, "cableId" | "purpose" | "terminalId" | "splitterId" | "closureId">;

/** From the cable's feed end, m; null where that place is not on the cable or not told. */
export function takingStationM(plant: Plant, { cableId, terminalId, closureId }: Taking): number | null {
  const place =
    terminalId !== null
      ? plant.row("terminal", terminalId)
      : closureId === null
        ? undefined
        : plant.row("closure", closureId);
  return place ? stationM(plant, cableId, place.spanId, place.offsetM) : null;
}

/** Loss to the fiber that goes on beyond a use, dB; null where the fiber ends there. */
export function throughLossDb(plant: Plant, { purpose, splitterId }: Taking): number | null {
  if (purpose !== "terminal" || splitterId === null) return null;
  const { throughLossDb: lossDb } = plant.rowOf("splitterType", plant.rowOf("splitter", splitterId).splitterTypeId);
  return lossDb > 0 ? lossDb : null;
}

/** Those of some takings of one fiber that open it nearer the hub than another one does. */
export function takingsBefore<T extends Taking>(plant: Plant, one: Taking, others: readonly T[]): readonly T[] {
  const here = takingStationM(plant, one);
  if (here === null) return [];
  return others.filter((other) => {
    const there = other.purpose === "reserved" ? null : takingStationM(plant, other);
    return there !== null && there < here;
  });
}

/** Whether takings of one fiber are taps one behind the other, so that light reaches all of them: only the farthest may end it. */
export function isTapChain(plant: Plant, takings: readonly Taking[]): boolean {
  const hung = takings
    .map((one) => ({ atM: takingStationM(plant, one), passesOn: throughLossDb(plant, one) !== null, one }))
    .sort((a, b) => (a.atM ?? 0) - (b.atM ?? 0));
  return hung.every(({ atM, passesOn, one }, index) => {
    const next = hung[index + 1];
    if (atM === null || one.purpose === "reserved") return false;
    return next === undefined || (passesOn && next.atM !== null && next.atM > atM);
  });
}

import { defineQuery, type Plant } from "../plant/plant.ts";
import { terminalPlace } from "../plant/terminalView.ts";
import { cablesFromHub } from "./cableOrder.ts";
import { compareNatural } from "./order.ts";

/** A cable and the terminals that hang on it. */
export type CableTerminals = { readonly cableId: string; readonly terminalIds: readonly string[] };

/** Terminals as one meets them going out from the hub: cable by cable, along each from its feed end. */
export function terminalsFromHub(plant: Plant): readonly CableTerminals[] {
  return ordered(plant, "");
}

const ordered = defineQuery("terminals-from-hub", (plant): readonly CableTerminals[] => {
  const led = cablesFromHub(plant);
  const stray = plant.all("cable").filter((id) => !led.includes(id));
  return [...led, ...stray.toSorted(compareNatural)].map((cableId) => ({
    cableId,
    terminalIds: plant
      .where("terminal", "cableId", cableId)
      .map((id) => ({ id, at: terminalPlace(plant, id).stationM ?? Number.POSITIVE_INFINITY }))
      .sort((a, b) => a.at - b.at || compareNatural(a.id, b.id))
      .map((one) => one.id),
  }));
});

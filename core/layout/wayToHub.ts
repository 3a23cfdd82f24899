import { stationM } from "../plant/cablePath.ts";
import { hungSlackM } from "../plant/hungSlack.ts";
import type { Plant } from "../plant/plant.ts";
import type { PlacedTerminal } from "./placeTerminals.ts";
import type { PresentLayout } from "./presentLayout.ts";
import type { Site } from "./sites.ts";

/** How light comes to a place of a layout: fiber from the hub on, m, and splices, the one at the place included. */
export type WayToHub = { readonly fiberM: number; readonly spliceCount: number };

type Coil = { readonly atM: number; readonly storedM: number };

/**
 * Ways to the places of a layout, its own coils and those that stay counted; null where a cable does not lead there, or its splices do not
 * lead back to the hub.
 *
 * @param placed  every terminal of the layout
 */
export function openWays(
  plant: Plant,
  present: PresentLayout,
  placed: readonly PlacedTerminal[],
): (site: Pick<Site, "cableId" | "spanId" | "offsetM">) => WayToHub | null {
  const coils = coilsByCable(plant, present, placed);
  const way = (
    { cableId, spanId, offsetM }: Pick<Site, "cableId" | "spanId" | "offsetM">,
    depth: number,
  ): WayToHub | null => {
    const hereM = stationM(plant, cableId, spanId, offsetM);
    if (hereM === null || depth > plant.all("cable").length) return null;
    const cable = plant.rowOf("cable", cableId);
    const storedM = (coils.get(cableId) ?? []).reduce((sum, one) => (one.atM <= hereM ? sum + one.storedM : sum), 0);
    const { fiberExcessFrac } = plant.rowOf("cableType", cable.cableTypeId);
    const fiberM = (hereM + storedM + hungSlackM(plant, cableId, spanId, offsetM)) * (1 + fiberExcessFrac);
    if (cable.fromClosureId === null) return { fiberM, spliceCount: 1 };
    const parent = way(plant.rowOf("closure", cable.fromClosureId), depth + 1);
    return parent && { fiberM: parent.fiberM + fiberM, spliceCount: parent.spliceCount + 1 };
  };
  return (site) => way(site, 0);
}

function coilsByCable(plant: Plant, present: PresentLayout, placed: readonly PlacedTerminal[]) {
  const relaid = new Set(present.relaid.slack.map((one) => one.id));
  const coils = new Map<string, Coil[]>();
  const add = (cableId: string, coil: Coil) => {
    const there = coils.get(cableId);
    if (there) there.push(coil);
    else coils.set(cableId, [coil]);
  };
  for (const id of plant.all("slack")) {
    const { cableId, spanId, offsetM, storedM } = plant.rowOf("slack", id);
    const atM = stationM(plant, cableId, spanId, offsetM);
    if (!relaid.has(id) && atM !== null) add(cableId, { atM, storedM });
  }
  const { accessSlackM } = plant.settings();
  for (const { site } of placed)
    if (site.terminalId === null) add(site.cableId, { atM: site.stationM, storedM: accessSlackM });
  return coils;
}

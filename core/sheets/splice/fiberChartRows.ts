import type { FiberUse } from "../../model/tables.ts";
import { feedOfUse, fiberUseStationM } from "../../plant/fiberTrace.ts";
import { tubeOf, usesOfCable } from "../../plant/fiberView.ts";
import type { Plant } from "../../plant/plant.ts";
import { byText } from "../../plant/sorting.ts";

/** Where fibers leave a cable: a terminal or a closure. */
type ChartPlace = { readonly key: string; readonly name: string; readonly stationM: number };

/** One fiber with what it is used for. */
export type ChartFiber = {
  readonly fiber: number;
  readonly tube: number;
  readonly place: number;
  readonly uses: readonly {
    readonly purpose: FiberUse["purpose"];
    readonly placeKey: string | null;
    readonly text: string;
  }[];
};

/** Fibers of whole tubes that share a sheet, and the places where any of them leaves the cable, from the feed end. */
export type ChartPage = { readonly fibers: readonly ChartFiber[]; readonly places: readonly ChartPlace[] };

/**
 * A cable's fibers, tube by tube, as many whole tubes on a page as fit.
 *
 * @param mostFibers  fibers that fit one under the other
 */
export function chartPages(plant: Plant, cableId: string, mostFibers: number): readonly ChartPage[] {
  const { fiberCount, fibersPerTube } = plant.rowOf("cableType", plant.rowOf("cable", cableId).cableTypeId);
  const uses = usesOfCable(plant, cableId).map((id) => plant.rowOf("fiberUse", id));
  const fibers = Array.from({ length: fiberCount }, (_, index): ChartFiber => {
    const fiber = index + 1;
    const own = uses.filter((one) => one.fiber === fiber);
    return {
      fiber,
      ...tubeOf(plant, cableId, fiber),
      uses: own.map((use) => ({ purpose: use.purpose, placeKey: placeKey(use), text: useText(plant, use) })),
    };
  });
  const perPage = Math.max(1, Math.floor(mostFibers / fibersPerTube)) * fibersPerTube;
  return Array.from({ length: Math.ceil(fiberCount / perPage) }, (_, index): ChartPage => {
    const shown = fibers.slice(index * perPage, (index + 1) * perPage);
    const own = uses.filter((use) => shown.some((one) => one.fiber === use.fiber));
    return { fibers: shown, places: placesOf(plant, own) };
  });
}

function placeKey({ terminalId, closureId }: FiberUse): string | null {
  return terminalId ?? closureId;
}

function placesOf(plant: Plant, uses: readonly FiberUse[]): readonly ChartPlace[] {
  const places = new Map<string, ChartPlace>();
  for (const use of uses) {
    const key = placeKey(use);
    const stationM = fiberUseStationM(plant, use.id);
    if (key === null || stationM === null) continue;
    const row = use.terminalId === null ? plant.row("closure", key) : plant.row("terminal", key);
    if (row) places.set(key, { key, name: row.name, stationM });
  }
  return [...places.values()].sort((a, b) => a.stationM - b.stationM || byText(a.key, b.key));
}

/** Where a fiber goes, in words. */
function useText(plant: Plant, use: FiberUse): string {
  const feedId = use.purpose === "terminal" || use.purpose === "lateral" ? feedOfUse(plant, use.id) : null;
  const from = feedId === null ? "" : `, lit by ${plant.rowOf("feed", feedId).name}`;
  switch (use.purpose) {
    case "terminal": {
      const splitter = use.splitterId === null ? undefined : plant.row("splitter", use.splitterId);
      const inside = splitter ? `, splitter ${splitter.position}` : "";
      return `${use.terminalId === null ? "no terminal" : plant.rowOf("terminal", use.terminalId).name}${inside}${from}`;
    }
    case "lateral": {
      const name = use.lateralCableId === null ? "no cable" : plant.rowOf("cable", use.lateralCableId).name;
      return `to ${name}, fiber ${use.lateralFiber ?? "?"}${from}`;
    }
    case "reserved":
      return "reserved";
    case "dead":
      return "dead";
  }
}

import type { Feed, FiberUse, Splitter } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { giveFeeds } from "./giveFeeds.ts";
import type { PresentLayout } from "./presentLayout.ts";

/**
 * The uses of a layout with the hub outputs that light them, and the outputs that had to be added.
 *
 * Only fibers of a cable that comes from the hub name an output; a lateral's fibers are lit through the one they are spliced to.
 *
 * @param splitters  the layout's new splitters; those of terminals that stay are found in the route
 */
export function feedRowsOf(
  plant: Plant,
  present: PresentLayout,
  uses: readonly FiberUse[],
  splitters: readonly Splitter[],
): { readonly uses: readonly FiberUse[]; readonly added: readonly Feed[] } {
  const legs = new Map(splitters.map((one) => [one.id, plant.rowOf("splitterType", one.splitterTypeId).legCount]));
  const useAt = new Map([...present.fixedUses, ...uses].map((one) => [`${one.cableId} ${one.fiber}`, one]));
  const legsOf = (use: FiberUse | undefined): number => {
    if (!use) return 1;
    if (use.purpose === "lateral") return legsOf(useAt.get(`${use.lateralCableId} ${use.lateralFiber}`));
    if (use.splitterId === null) return 1;
    const there = legs.get(use.splitterId);
    return there ?? plant.rowOf("splitterType", plant.rowOf("splitter", use.splitterId).splitterTypeId).legCount;
  };
  const unlit = uses
    .filter((one) => plant.rowOf("cable", one.cableId).fromClosureId === null)
    .sort((a, b) => (a.cableId < b.cableId ? -1 : a.cableId > b.cableId ? 1 : a.fiber - b.fiber))
    .map((one) => ({ key: one.id, legCount: legsOf(one) }));
  const feeds = [...plant.route().feed.values()];
  const { feedIdOf, added } = giveFeeds(plant, unlit, feeds, present.fixedUses);
  return { uses: uses.map((one) => ({ ...one, feedId: feedIdOf.get(one.id) ?? null })), added };
}

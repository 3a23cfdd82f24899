import type { Feed, FiberUse, Splitter } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { giveFeeds } from "./giveFeeds.ts";
import { groupBy } from "./groupBy.ts";
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
  const usesAt = groupBy([...present.fixedUses, ...uses], fiberOf);
  const legsOf = (use: FiberUse): number => {
    if (use.purpose === "lateral") return legsAt(`${use.lateralCableId} ${use.lateralFiber}`);
    if (use.splitterId === null) return use.purpose === "dead" ? 0 : 1;
    const there = legs.get(use.splitterId);
    return there ?? plant.rowOf("splitterType", plant.rowOf("splitter", use.splitterId).splitterTypeId).legCount;
  };
  const legsAt = (fiber: string): number =>
    Math.max(
      1,
      (usesAt.get(fiber) ?? []).reduce((sum, one) => sum + legsOf(one), 0),
    );
  const fromHub = uses
    .filter((one) => plant.rowOf("cable", one.cableId).fromClosureId === null)
    .sort((a, b) => (a.cableId < b.cableId ? -1 : a.cableId > b.cableId ? 1 : a.fiber - b.fiber));
  const unlit = [...new Set(fromHub.map(fiberOf))].map((fiber) => ({ key: fiber, legCount: legsAt(fiber) }));
  const feeds = [...plant.route().feed.values()];
  const { feedIdOf, added } = giveFeeds(plant, unlit, feeds, present.fixedUses);
  return { uses: uses.map((one) => ({ ...one, feedId: feedIdOf.get(fiberOf(one)) ?? null })), added };
}

function fiberOf({ cableId, fiber }: FiberUse): string {
  return `${cableId} ${fiber}`;
}

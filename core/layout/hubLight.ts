import type { Feed } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { hubLegCount, hubLossDb } from "./giveFeeds.ts";
import { compareNatural } from "./order.ts";

/** The hub's outputs as a layout finds them: any of them, or one like the last, may light what it feeds. */
export type HubLight = {
  readonly feeds: readonly Feed[];
  /** The larger loss of both ways of the worst class among them, dB/km. */
  readonly dbPerKm: number;
};

/** Outputs of the hub in their order; null where there is none, so that nobody can tell how much light there is. */
export function hubLight(plant: Plant): HubLight | null {
  const feeds = [...plant.route().feed.values()].sort((a, b) => compareNatural(a.id, b.id));
  if (feeds.length === 0) return null;
  const losses = feeds.map(({ opticalClassId }) => {
    const { upDbPerKm, downDbPerKm } = plant.rowOf("opticalClass", opticalClassId);
    return Math.max(upDbPerKm, downDbPerKm);
  });
  return { feeds, dbPerKm: Math.max(...losses) };
}

/**
 * What may be lost behind the hub's splitter by a fiber that ends in so many legs, dB: by the worst output that may light it, the company's
 * margin kept.
 *
 * @returns null where no class bears as many legs
 */
export function lightLeftDb(plant: Plant, { feeds }: HubLight, legCount: number): number | null {
  const { marginDb } = plant.settings();
  const last = feeds.at(-1);
  const left = feeds.flatMap((feed) => {
    const { maxSplitCount, maxLossDb } = plant.rowOf("opticalClass", feed.opticalClassId);
    const asItIs = feed.hubSplitCount * legCount <= maxSplitCount ? [maxLossDb - feed.upstreamLossDb] : [];
    // Where outputs run short one like the last is added, with a splitter of its own.
    const added = feed === last && legCount <= maxSplitCount;
    return added ? [...asItIs, maxLossDb - hubLossDb(plant, hubLegCount(maxSplitCount, legCount))] : asItIs;
  });
  return left.length === 0 ? null : Math.min(...left) - marginDb;
}

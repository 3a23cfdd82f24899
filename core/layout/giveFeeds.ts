import { splitLossLimitDb } from "../fiber/splitterLoss.ts";
import type { Feed, FiberUse } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { compareNatural } from "./order.ts";

/** A fiber at the hub that waits for light, and the legs it ends in. */
export type UnlitFiber = { readonly key: string; readonly legCount: number };

/**
 * Hub outputs for fibers: the first that has a leg left and whose splits, at the hub and in the terminal together, stay within
 * its optical class. Where none has, an output like the last one is added, with as many legs as the class allows.
 *
 * @param feeds  hub outputs there are
 * @param fixed  uses that keep their feed
 * @returns feedIdOf: by the fiber's key, absent where the class allows no such split or there is no output to be like
 */
export function giveFeeds(
  plant: Plant,
  fibers: readonly UnlitFiber[],
  feeds: readonly Feed[],
  fixed: readonly FiberUse[],
): { readonly feedIdOf: ReadonlyMap<string, string>; readonly added: readonly Feed[] } {
  const outputs = [...feeds].sort((a, b) => compareNatural(a.id, b.id));
  const used = new Map<string, number>();
  const use = (feedId: string) => used.set(feedId, (used.get(feedId) ?? 0) + 1);
  // Taps one behind the other share a fiber, and that fiber one leg of the hub.
  const lit = new Map(fixed.map((one) => [`${one.cableId} ${one.fiber}`, one.feedId]));
  for (const feedId of lit.values()) if (feedId !== null) use(feedId);
  const ids = new Set(outputs.map((one) => one.id));
  const feedIdOf = new Map<string, string>();
  const added: Feed[] = [];
  for (const { key, legCount } of fibers) {
    const fits = (feed: Feed) =>
      (used.get(feed.id) ?? 0) < feed.hubSplitCount && feed.hubSplitCount * legCount <= splitLimit(plant, feed);
    let feed = outputs.find(fits);
    const last = outputs.at(-1);
    if (!feed && last && legCount <= splitLimit(plant, last)) {
      let number = outputs.length + 1;
      while (ids.has(`feed-${number}`)) number += 1;
      feed = feedLike(plant, last, `feed-${number}`, `Hub output ${number}`, legCount);
      ids.add(feed.id);
      outputs.push(feed);
      added.push(feed);
    }
    if (!feed) continue;
    use(feed.id);
    feedIdOf.set(key, feed.id);
  }
  return { feedIdOf, added };
}

/**
 * Legs of the splitter at the hub that go with terminals of so many legs: the largest power of two the class allows.
 *
 * @param maxSplitCount  living units one output may be split to
 * @param legCount       legs of the splitter in the terminal
 */
export function hubLegCount(maxSplitCount: number, legCount: number): number {
  return 2 ** Math.max(0, Math.floor(Math.log2(maxSplitCount / legCount)));
}

/** Loss of a splitter at the hub and its two connections, dB; the catalogue's largest loss where it lists the size. */
export function hubLossDb(plant: Plant, hubSplitCount: number): number {
  const { connectionLossDb } = plant.settings();
  if (hubSplitCount < 2) return connectionLossDb;
  const types = plant.all("splitterType").map((id) => plant.rowOf("splitterType", id));
  const type = types.find((one) => one.legCount === hubSplitCount);
  return (type?.maxLossDb ?? splitLossLimitDb(hubSplitCount)) + 2 * connectionLossDb;
}

function feedLike(plant: Plant, last: Feed, id: string, name: string, legCount: number): Feed {
  const hubSplitCount = hubLegCount(splitLimit(plant, last), legCount);
  const sameSplit = hubSplitCount === last.hubSplitCount;
  return {
    ...last,
    id,
    name,
    hubSplitCount,
    upstreamLossDb: sameSplit ? last.upstreamLossDb : hubLossDb(plant, hubSplitCount),
  };
}

function splitLimit(plant: Plant, feed: Feed): number {
  return plant.rowOf("opticalClass", feed.opticalClassId).maxSplitCount;
}

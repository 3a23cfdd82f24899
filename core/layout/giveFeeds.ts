import { splitLossLimitDb } from "../fiber/splitterLoss.ts";
import type { Feed, FiberUse } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { compareNatural } from "./order.ts";

/** A fiber at the hub that waits for light, and the legs it ends in. */
export type UnlitFiber = { readonly key: string; readonly legCount: number };

/** What lights which fiber, and the outputs that had to be added for it. */
type GivenFeeds = { readonly feedIdOf: ReadonlyMap<string, string>; readonly added: readonly Feed[] };

/**
 * Hub outputs for fibers: as few as do, each with its share of them. An output lights a fiber where it has a leg left and the splits, at
 * the hub and in the terminal together, stay within its optical class. Where none does, an output like the last one is added, with as
 * many legs as the class allows. Fibers that follow each other get one output after the other.
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
): GivenFeeds {
  // Taps one behind the other share a fiber, and that fiber one leg of the hub.
  const lit = new Map(fixed.map((one) => [`${one.cableId} ${one.fiber}`, one.feedId]));
  const held = new Map<string, number>();
  for (const feedId of lit.values()) if (feedId !== null) held.set(feedId, (held.get(feedId) ?? 0) + 1);
  const { opened, added, dark } = openOutputs(plant, fibers, feeds, new Map(held));
  const bright = fibers.filter((one) => !dark.has(one.key));
  return { feedIdOf: shareOut(plant, bright, opened, held), added };
}

/** The outputs that are needed, the first with a leg left before the next; and the fibers none can light. */
function openOutputs(plant: Plant, fibers: readonly UnlitFiber[], feeds: readonly Feed[], used: Map<string, number>) {
  const outputs = [...feeds].sort((a, b) => compareNatural(a.id, b.id));
  const ids = new Set(outputs.map((one) => one.id));
  const opened = new Set<Feed>();
  const added: Feed[] = [];
  const dark = new Set<string>();
  for (const { key, legCount } of fibers) {
    let feed = outputs.find((one) => (used.get(one.id) ?? 0) < one.hubSplitCount && mayLight(plant, one, legCount));
    const last = outputs.at(-1);
    if (!feed && last && legCount <= splitLimit(plant, last)) {
      let number = outputs.length + 1;
      while (ids.has(`feed-${number}`)) number += 1;
      feed = feedLike(plant, last, `feed-${number}`, `Hub output ${number}`, legCount);
      ids.add(feed.id);
      outputs.push(feed);
      added.push(feed);
    }
    if (!feed) {
      dark.add(key);
      continue;
    }
    used.set(feed.id, (used.get(feed.id) ?? 0) + 1);
    opened.add(feed);
  }
  return { opened: outputs.filter((one) => opened.has(one)), added, dark };
}

/**
 * Fibers shared out over opened outputs so that all are filled alike. Those of most legs first: fewest outputs may light them, and
 * whatever may light them may light the others too.
 */
function shareOut(
  plant: Plant,
  fibers: readonly UnlitFiber[],
  outputs: readonly Feed[],
  used: Map<string, number>,
): ReadonlyMap<string, string> {
  const feedIdOf = new Map<string, string>();
  const legCounts = [...new Set(fibers.map((one) => one.legCount))].sort((a, b) => b - a);
  for (const legCount of legCounts) {
    const alike = fibers.filter((one) => one.legCount === legCount);
    const may = outputs.filter((one) => mayLight(plant, one, legCount));
    const given = alike.flatMap(() => {
      const feed = leastFilled(may, used);
      if (feed) used.set(feed.id, (used.get(feed.id) ?? 0) + 1);
      return feed ? outputs.indexOf(feed) : [];
    });
    given.sort((a, b) => a - b);
    alike.forEach(({ key }, index) => {
      const feed = outputs[given[index] ?? -1];
      if (feed) feedIdOf.set(key, feed.id);
    });
  }
  return feedIdOf;
}

/** The output that one fiber more would leave least filled, the first of equals; undefined where all are full. */
function leastFilled(outputs: readonly Feed[], used: ReadonlyMap<string, number>): Feed | undefined {
  const filledFrac = (one: Feed) => ((used.get(one.id) ?? 0) + 1) / one.hubSplitCount;
  return outputs.filter((one) => filledFrac(one) <= 1).sort((a, b) => filledFrac(a) - filledFrac(b))[0];
}

function mayLight(plant: Plant, feed: Feed, legCount: number): boolean {
  return feed.hubSplitCount * legCount <= splitLimit(plant, feed);
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
  const type = types.find((one) => one.legCount === hubSplitCount && one.throughLossDb === 0);
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

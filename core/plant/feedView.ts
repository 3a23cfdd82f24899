import type { FiberUse } from "../model/tables.ts";
import { parentUse } from "./fiberTrace.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { portsOf } from "./terminalView.ts";

/** Fibers a hub output lights: taps one behind the other on one fiber count once. */
export const litFiberCount = defineQuery(
  "lit-fiber-count",
  (plant, feedId): number => new Set(usesOfFeed(plant, feedId).map((one) => `${one.cableId} ${one.fiber}`)).size,
);

/** Leg of the hub's splitter a use's fiber is lit by, from 1, in the order of cables and fibers; null where it names no output. */
export const hubLeg = defineQuery("hub-leg", (plant, fiberUseId): number | null => {
  const { cableId, fiber, feedId } = plant.rowOf("fiberUse", fiberUseId);
  if (feedId === null) return null;
  const before = usesOfFeed(plant, feedId).filter(
    (one) => one.cableId < cableId || (one.cableId === cableId && one.fiber < fiber),
  );
  return new Set(before.map((one) => `${one.cableId} ${one.fiber}`)).size + 1;
});

/** Ids of the drops a hub output lights, through laterals and taps, sorted. */
export const dropsOfFeed = defineQuery("drops-of-feed", (plant, feedId): readonly string[] => {
  const splitterIds = new Set(usesOfFeed(plant, feedId).flatMap((use) => splittersBehind(plant, use, new Set())));
  const terminalIds = new Set([...splitterIds].map((id) => plant.rowOf("splitter", id).terminalId));
  return [...terminalIds]
    .flatMap((id) => portsOf(plant, id))
    .filter((one) => one.splitterId !== null && splitterIds.has(one.splitterId))
    .flatMap((one) => one.dropIds)
    .sort();
});

/** Legs of all splitters that get their light from the same fiber at the hub as a use does. */
export const legsOfFiber = defineQuery("legs-of-fiber", (plant, fiberUseId): number => {
  const visited = new Set<string>();
  let root = plant.rowOf("fiberUse", fiberUseId);
  for (let parent = parentUse(plant, root); parent && !visited.has(parent.id); parent = parentUse(plant, parent)) {
    visited.add(parent.id);
    root = parent;
  }
  return splittersBehind(plant, root, new Set()).reduce(
    (sum, id) => sum + plant.rowOf("splitterType", plant.rowOf("splitter", id).splitterTypeId).legCount,
    0,
  );
});

function usesOfFeed(plant: Plant, feedId: string): readonly FiberUse[] {
  return plant.where("fiberUse", "feedId", feedId).map((id) => plant.rowOf("fiberUse", id));
}

/** Splitters that a use's fiber lights anywhere along it and along the laterals it is spliced to. */
export function splittersBehind(plant: Plant, { cableId, fiber }: FiberUse, visited: Set<string>): readonly string[] {
  const key = `${cableId} ${fiber}`;
  if (visited.has(key)) return [];
  visited.add(key);
  return plant
    .whereAll("fiberUse", { cableId, fiber: String(fiber) })
    .map((id) => plant.rowOf("fiberUse", id))
    .flatMap((one) => {
      if (one.purpose === "terminal") return one.splitterId ?? [];
      if (one.purpose !== "lateral" || one.lateralCableId === null || one.lateralFiber === null) return [];
      return splittersBehind(plant, { ...one, cableId: one.lateralCableId, fiber: one.lateralFiber }, visited);
    });
}

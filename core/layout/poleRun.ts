import { farPoleId, spansAtPole } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";

/** The poles along the line from each chosen pole to the next, these included; a chosen pole no span leads to stands alone. */
export function poleRun(plant: Plant, chosenIds: readonly string[]): readonly string[] {
  const run = new Set(chosenIds);
  chosenIds.slice(1).forEach((to, index) => {
    for (const id of wayBetween(plant, chosenIds[index] ?? to, to)) run.add(id);
  });
  return [...run];
}

function wayBetween(plant: Plant, from: string, to: string): readonly string[] {
  const cameFrom = new Map<string, string | null>([[from, null]]);
  for (const [id] of cameFrom) {
    if (id === to) break;
    for (const spanId of spansAtPole(plant, id)) {
      const next = farPoleId(plant, spanId, id);
      if (!cameFrom.has(next)) cameFrom.set(next, id);
    }
  }
  const way: string[] = [];
  for (let at: string | null = cameFrom.has(to) ? to : null; at !== null; at = cameFrom.get(at) ?? null) way.push(at);
  return way;
}

import type { Plant } from "./plant.ts";

/** A span as people name it: by the tags of its poles, first pole first. */
export function spanName(plant: Plant, spanId: string): string {
  const { fromPoleId, toPoleId } = plant.rowOf("span", spanId);
  return `${plant.rowOf("pole", fromPoleId).tag} to ${plant.rowOf("pole", toPoleId).tag}`;
}

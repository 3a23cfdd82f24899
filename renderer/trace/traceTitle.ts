import { fiberName } from "../../core/closeout/traceWords.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { traceWords } from "./words.ts";

/** A trace as the list of them names it; one of no fiber by its file. */
export function traceTitle(plant: Plant, traceId: string): string {
  const trace = plant.rowOf("trace", traceId);
  const wavelength = `${Math.round(trace.wavelengthNm)} nm`;
  if (trace.cableId === null || trace.fiber === null) return `${trace.fileName}, ${wavelength}, ${traceWords.whose}`;
  const name = fiberName(plant, trace);
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}, ${wavelength}, from ${traceWords.ends[trace.fromEnd]}`;
}

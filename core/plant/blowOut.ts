import type { WindyCase } from "../model/loadRows.ts";
import type { Plant } from "./plant.ts";
import { spanSag } from "./spanSag.ts";
import { tensionInN } from "./strandRow.ts";
import { stateIn } from "./strength.ts";
import { windyLoad } from "./windyLoad.ts";

/**
 * How far the strand swings out level at a place in a case with wind, m; null where its sag is unknown or the route is not checked
 * under the case.
 *
 * The constant of a district is for tension only and not in it. Terminals and coils hang in it by their weights; wind on them is not
 * counted.
 *
 * @param offsetM from the span's first pole, m
 * @source level equilibrium, p x (L - x) / 2H, the wind pressing on the length along the slope; the angle of handbooks, atan(wind /
 *   vertical), is the same thing. Its error is that of the parabola: loadedSagM
 */
export function blowOutM(plant: Plant, spanId: string, offsetM: number, condition: WindyCase): number | null {
  const sag = spanSag(plant, spanId);
  const load = windyLoad(plant, spanId, condition);
  const horizontalN =
    condition === "loaded"
      ? tensionInN(plant, spanId, "blown")
      : (stateIn(plant, spanId, condition)?.horizontalN ?? null);
  if (sag.kind === "unknown" || load === null || horizontalN === null) return null;
  const atM = Math.min(Math.max(offsetM, 0), sag.lengthM);
  const alongFrac = Math.hypot(sag.lengthM, sag.riseM) / sag.lengthM;
  return (load.windNPerM * alongFrac * atM * (sag.lengthM - atM)) / (2 * horizontalN);
}

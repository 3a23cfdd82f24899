import { lineLoad } from "../strand/lineLoad.ts";
import type { Plant } from "./plant.ts";
import { spanBundle } from "./spanLoad.ts";
import { spanSag } from "./spanSag.ts";
import { weather } from "./spanStates.ts";
import { tensionInN } from "./strandRow.ts";

/**
 * How far the strand swings out level at a place under the wind and ice of the district, m; null where its sag is unknown. Told beside
 * a structure, and held against nothing: the limits beside one are for the line at rest.
 *
 * The constant of a district is for tension only and not in it. Terminals and coils hang in it by their weights; wind on them is not
 * counted.
 *
 * @param offsetM from the span's first pole, m
 * @source level equilibrium, p x (L - x) / 2H, the wind pressing on the length along the slope; the angle of handbooks, atan(wind /
 *   vertical), is the same thing
 */
export function blowOutM(plant: Plant, spanId: string, offsetM: number): number | null {
  const bundle = spanBundle(plant, spanId);
  const sag = spanSag(plant, spanId);
  const horizontalN = tensionInN(plant, spanId, "blown");
  if (sag.kind === "unknown" || bundle === null || horizontalN === null) return null;
  const district = plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId);
  const { windNPerM } = lineLoad(weather(bundle, district));
  const atM = Math.min(Math.max(offsetM, 0), sag.lengthM);
  const alongFrac = Math.hypot(sag.lengthM, sag.riseM) / sag.lengthM;
  return (windNPerM * alongFrac * atM * (sag.lengthM - atM)) / (2 * horizontalN);
}

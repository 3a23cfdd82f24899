import type { WindyCase } from "../model/loadRows.ts";
import { type LineLoad, type LineLoadCase, lineLoad } from "../strand/lineLoad.ts";
import { pascalsAtOneMetrePerSecond } from "../strand/windPressure.ts";
import { extremeLoadCase } from "./extremeWeather.ts";
import type { Plant } from "./plant.ts";
import { spanBundle } from "./spanLoad.ts";
import { weather } from "./spanStates.ts";

/** What hangs and blows on a length of a span, with what went into it. */
export type WindyLoad = LineLoadCase &
  LineLoad & {
    /** What a gust of 1 m/s presses with before factors, Pa; the pressure goes with its square. */
    readonly unitGustPa: number;
  };

/** Load per length of a span in a case with wind; null where the route is not checked under it, or the span carries no strand. */
export function windyLoad(plant: Plant, spanId: string, part: WindyCase): WindyLoad | null {
  const load = loadCase(plant, spanId, part);
  return load && { ...load, ...lineLoad(load), unitGustPa: pascalsAtOneMetrePerSecond };
}

function loadCase(plant: Plant, spanId: string, part: WindyCase): LineLoadCase | null {
  if (part !== "loaded") return extremeLoadCase(plant, spanId, part);
  const bundle = spanBundle(plant, spanId);
  return bundle && weather(bundle, plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId));
}

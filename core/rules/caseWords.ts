import type { StrengthCase } from "../model/loadRows.ts";
import { extremeRow } from "../plant/extremeWeather.ts";
import type { Plant } from "../plant/plant.ts";

/** A case as a finding names it. */
export function caseWords(plant: Plant, condition: StrengthCase): string {
  switch (condition) {
    case "stringing":
      return "at the stringing temperature";
    case "hot":
      return "at the hot condition";
    case "iced":
      return "under ice";
    case "extremeWind":
    case "extremeIce":
      return `under the load of ${extremeRow(plant, condition)?.name ?? "no extreme weather"}`;
    case "worker":
      return "with a worker on the strand";
    case "loaded":
      return `under the load of ${plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId).name}`;
  }
}

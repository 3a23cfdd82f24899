import type { StrengthCase } from "../model/catalogueRows.ts";
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
    case "loaded":
      return `under the load of ${plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId).name}`;
  }
}

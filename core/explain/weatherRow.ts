import type { StrengthCase } from "../model/loadRows.ts";
import type { TableName } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";

/** The row that makes a case what it is: the stringing of the section, a district or extreme weather, the settings' worker. */
export function weatherRow(
  plant: Plant,
  part: StrengthCase,
  sectionId: string,
): readonly [table: TableName, id: string] {
  const { id, loadingDistrictId, extremeWindId, extremeIceId } = plant.settings();
  switch (part) {
    case "stringing":
      return ["strandSection", sectionId];
    case "hot":
    case "iced":
    case "loaded":
      return ["loadingDistrict", loadingDistrictId];
    case "extremeWind":
      return extremeWindId === null ? ["settings", id] : ["extremeWind", extremeWindId];
    case "extremeIce":
      return extremeIceId === null ? ["settings", id] : ["extremeIce", extremeIceId];
    case "worker":
      return ["settings", id];
  }
}

import type { StrengthCase } from "../model/catalogueRows.ts";
import type { LoadingDistrict, StrandType } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { catalogueBasis, isUnverified } from "./rule.ts";

/**
 * What a message says of catalogue rows its measured figure was worked out from: which of them nobody has read in their
 * document. The basis of the limit is told beside the finding.
 */
export function leaningWords(rows: readonly (LoadingDistrict | StrandType)[]): string {
  const names = [...new Set(rows.filter((row) => isUnverified(catalogueBasis(row))).map((row) => row.name))];
  return names.length === 0 ? "" : `, worked out from unverified figures of ${names.join(" and ")}`;
}

/** The loading district, where one of the cases is of its making. */
export function districtOf(plant: Plant, conditions: readonly StrengthCase[]): readonly LoadingDistrict[] {
  return conditions.every((one) => one === "stringing")
    ? []
    : [plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId)];
}

/** What the sag of a span leans on: nothing at stringing, where the crew sets it; else the district and the strand, which stretches. */
export function sagLeansOn(
  plant: Plant,
  spanId: string,
  conditions: readonly StrengthCase[],
): readonly (LoadingDistrict | StrandType)[] {
  const { strandSectionId } = plant.rowOf("span", spanId);
  const district = districtOf(plant, conditions);
  if (strandSectionId === null || district.length === 0) return district;
  return [...district, plant.rowOf("strandType", plant.rowOf("strandSection", strandSectionId).strandTypeId)];
}

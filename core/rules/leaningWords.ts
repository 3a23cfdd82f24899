import type { StrengthCase } from "../model/loadRows.ts";
import { extremeCases, extremeRow, windFactors } from "../plant/extremeWeather.ts";
import type { Plant } from "../plant/plant.ts";
import { catalogueBasis, isUnverified } from "./rule.ts";

/** A catalogue row with a name that figures were worked out from. */
type Named = Parameters<typeof catalogueBasis>[0] & { readonly name: string };

/**
 * What a message says of catalogue rows its measured figure was worked out from: which of them nobody has read in their
 * document. The basis of the limit is told beside the finding.
 */
export function leaningWords(rows: readonly Named[]): string {
  const names = [...new Set(rows.filter((row) => isUnverified(catalogueBasis(row))).map((row) => row.name))];
  return names.length === 0 ? "" : `, worked out from unverified figures of ${names.join(" and ")}`;
}

/** The rows whose weather a span is in, in these cases: district, extreme wind with its factors, extreme ice. */
export function weatherOf(
  plant: Plant,
  spanIds: readonly string[],
  conditions: readonly StrengthCase[],
): readonly Named[] {
  const districtMakes = (["hot", "iced", "loaded"] as const).some((one) => conditions.includes(one));
  const extremes = extremeCases.filter((one) => conditions.includes(one));
  const factors = extremes.includes("extremeWind")
    ? spanIds.flatMap((id) => Object.values(windFactors(plant, id)).map(({ row }) => row))
    : [];
  return [
    ...(districtMakes ? [plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId)] : []),
    ...[...extremes.map((one) => extremeRow(plant, one)), ...factors].filter((row) => row != null),
  ];
}

/** What the sag of a span leans on: nothing at stringing, where the crew sets it; else the district and the strand, which stretches. */
export function sagLeansOn(plant: Plant, spanId: string, conditions: readonly StrengthCase[]): readonly Named[] {
  const { strandSectionId } = plant.rowOf("span", spanId);
  const weather = weatherOf(plant, [spanId], conditions);
  if (strandSectionId === null || weather.length === 0) return weather;
  return [...weather, plant.rowOf("strandType", plant.rowOf("strandSection", strandSectionId).strandTypeId)];
}

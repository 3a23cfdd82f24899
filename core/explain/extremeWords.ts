import type { StrengthCase } from "../model/loadRows.ts";
import { type ExtremeCase, extremeCases, extremeRow, type FoundFactor, windFactors } from "../plant/extremeWeather.ts";
import type { Plant } from "../plant/plant.ts";
import { catalogueBasis } from "../rules/rule.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { basisWords } from "./basisWords.ts";

/** When the document asks for extreme weather, how high this span's poles stand, and which factors stand in, a sentence each. */
export function extremeWords(plant: Plant, spanId: string, part: StrengthCase, units: UnitSystem): readonly string[] {
  const condition = extremeCases.find((one) => one === part);
  const row = condition && extremeRow(plant, condition);
  if (!condition || !row) return [];
  const basis = catalogueBasis(row);
  const { fromPoleId, toPoleId } = plant.rowOf("span", spanId);
  const height = (poleId: string): string => {
    const { tag, aboveGroundM } = plant.rowOf("pole", poleId);
    return `${tag} ${aboveGroundM === null ? "an unknown height" : formatLength(aboveGroundM, units, "span")}`;
  };
  return [
    `Asked for only where a part of a pole or of its line stands more than ${formatLength(row.aboveM, units, "span")} above ground (${basisWords({ ...basis, clause: basis.clause.split(":")[0] ?? "", edition: "" })}). Above ground stand: ${height(fromPoleId)}, ${height(toPoleId)}. The route is checked under it because its settings name it.`,
    ...standInWords(plant, spanId, condition, units),
  ];
}

function standInWords(plant: Plant, spanId: string, condition: ExtremeCase, units: UnitSystem): readonly string[] {
  if (condition === "extremeIce") return ["The gust is counted as it is, without factors of height and span."];
  const { height, span } = windFactors(plant, spanId);
  const words = (name: string, { row, isBeyond }: FoundFactor): readonly string[] => {
    if (row === null) return [`The catalogue has no ${name}: it is counted as 1.`];
    const last = formatLength(row.upToM, units, "span");
    return isBeyond ? [`The catalogue has no ${name} beyond ${last}: that of ${last} stands in.`] : [];
  };
  return [...words("kz", height), ...words("GRF", span)];
}

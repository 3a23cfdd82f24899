import type { WindyCase } from "../model/loadRows.ts";
import { extremeRow, windFactors } from "../plant/extremeWeather.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { type WindyLoad, windyLoad } from "../plant/windyLoad.ts";
import { formatPressure } from "../units/formatPressure.ts";
import { formatSpeed } from "../units/formatSpeed.ts";
import { formatWeightPerLength } from "../units/formatWeightPerLength.ts";
import { significantText } from "../units/significantText.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { caseTitles } from "./caseTitles.ts";
import type { ExplainedInput, Explanation, NoExplanation } from "./explanation.ts";
import { extremeWords } from "./extremeWords.ts";
import { lengthInput, plainInput, saidInput } from "./inputs.ts";
import { weatherRow } from "./weatherRow.ts";

type From = Parameters<typeof plainInput>[3];

/** Load per length of a span's strand and cables in wind, in the plane they are blown into. */
export function explainLoad(
  plant: Plant,
  spanId: string,
  part: WindyCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const title = `Load ${caseTitles[part]}, span ${spanName(plant, spanId)}`;
  const { strandSectionId } = plant.rowOf("span", spanId);
  const load = windyLoad(plant, spanId, part);
  if (load === null || strandSectionId === null)
    return {
      kind: "unknown",
      title,
      why: "The route is not checked under this case, or the span carries no strand of ours.",
    };
  const { iceNPerM, totalNPerM, swingRad } = load;
  const from = weatherRow(plant, part, strandSectionId);
  const line = (symbol: string, name: string, valueNPerM: number, read: From) =>
    saidInput([symbol, name], [valueNPerM, "N/m"], formatWeightPerLength(valueNPerM, units), read);
  const isIced = load.iceM > 0;
  const [pressure, windInputs] = windOf(plant, spanId, part, [load, from, units]);
  const swing = Math.round((swingRad * 1800) / Math.PI) / 10;
  return {
    kind: "known",
    title,
    words: `Weight${isIced ? " and ice" : ""} down and wind level, at right angles; the constant of a district is added to both together.`,
    formula: `√(${isIced ? "(w + i)²" : "w²"} + (${pressure} · ${isIced ? "(d + 2 · t)" : "d"})²)${part === "loaded" ? " + K" : ""}`,
    inputs: [
      line("w", "weight of strand, cables and lashing", load.weightNPerM, ["strandSection", strandSectionId]),
      ...(isIced
        ? [
            line("i", "weight of the ice round strand and cables", iceNPerM, from),
            lengthInput(["t", "thickness of the ice"], load.iceM, [units, "thickness"], from),
          ]
        : []),
      lengthInput(
        ["d", "diameters of strand and cables together"],
        load.diameterM,
        [units, "thickness"],
        ["strandSection", strandSectionId],
      ),
      ...windInputs,
      ...(part === "loaded" ? [line("K", "constant of the district, for tension only", load.constantNPerM, from)] : []),
    ],
    result: { symbol: "q", value: totalNPerM, unit: "N/m", text: formatWeightPerLength(totalNPerM, units) },
    limit: null,
    source: "NESC Rules 250B to 250D, 251A, 251B, from memory",
    assumed: [`The line is blown out by ${swing}° from straight down.`, ...extremeWords(plant, spanId, part, units)],
  };
}

/** Pressure of the wind in symbols, and what goes into it: the district's own, or the gust and its factors. */
function windOf(
  plant: Plant,
  spanId: string,
  part: WindyCase,
  [load, from, units]: readonly [WindyLoad, From, UnitSystem],
): readonly [string, readonly ExplainedInput[]] {
  const row = part === "loaded" ? undefined : extremeRow(plant, part);
  if (!row)
    return [
      "p",
      [saidInput(["p", "wind on the projected area"], [load.windPa, "Pa"], formatPressure(load.windPa, units), from)],
    ];
  const gust = [
    saidInput(
      ["c", "pressure of a wind of 1 m/s: 0.00256 psf at 1 mph"],
      [load.unitGustPa, "Pa·s²/m²"],
      `${significantText(load.unitGustPa, 4)} Pa·s²/m²`,
      null,
    ),
    saidInput(["V", "gust"], [row.gustMPerS, "m/s"], formatSpeed(row.gustMPerS, units), from),
    plainInput(["Cf", "shape factor"], row.shapeFactor, "", from),
  ];
  if (!("importanceFactor" in row)) return ["c · V² · Cf", gust];
  const { height, span } = windFactors(plant, spanId);
  return [
    "c · V² · kz · GRF · I · Cf",
    [
      ...gust,
      plainInput(["kz", "factor of height"], height.factor, "", height.row && ["windFactor", height.row.id]),
      plainInput(["GRF", "factor of span"], span.factor, "", span.row && ["windFactor", span.row.id]),
      plainInput(["I", "importance factor"], row.importanceFactor, "", from),
    ],
  ];
}

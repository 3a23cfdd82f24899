import { extremeRow, windFactors, wireHeightM } from "../plant/extremeWeather.ts";
import { spanName } from "../plant/names.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";

export const windFactorMissing: Rule = {
  id: "wind-factor-missing",
  title: "The factors of extreme wind reach every height and span of the strand",
  compares:
    "The height of the strand and the length of its span, against those the factors of extreme wind are told for.",
  severity: "warning",
  basis: { ...routeItself, document: "factors of extreme wind" },
  each: "span",
  *check(plant, id) {
    const { strandSectionId } = plant.rowOf("span", id);
    if (strandSectionId === null || !extremeRow(plant, "extremeWind")) return;
    const { height, span } = windFactors(plant, id);
    const missing = [
      ...(height.row === null ? ["for its height"] : []),
      ...(span.row === null ? ["for its span"] : []),
      ...(height.isBeyond ? ["for a strand so high: the last one stands in"] : []),
    ];
    if (missing.length === 0) return;
    const last = height.isBeyond ? height.row : null;
    yield {
      subjects: [{ table: "span", id }],
      message: `In span ${spanName(plant, id)} the catalogue has no factor of extreme wind ${missing.join(" and ")}.`,
      measured: last && wireHeightM(plant, id),
      limit: last?.upToM ?? null,
      unit: last ? "m" : "",
      fixes: [],
      ...(last ? { basis: catalogueBasis(last) } : {}),
    };
  },
};

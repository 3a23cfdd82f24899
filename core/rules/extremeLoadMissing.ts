import { type ExtremeCase, extremeCases, extremeRow } from "../plant/extremeWeather.ts";
import type { Plant } from "../plant/plant.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

const caseNames: Readonly<Record<ExtremeCase, string>> = {
  extremeWind: "extreme wind",
  extremeIce: "extreme ice with wind",
};

export const extremeLoadMissing: Rule = {
  id: "extreme-load-missing",
  title: "Where a pole is tall enough, the strand is checked under extreme wind and extreme ice",
  compares:
    "The height of a pole above ground, against the height above which the document of the strength set asks for extreme wind and extreme ice, where the settings name none.",
  severity: "warning",
  basis: { ...routeItself, document: "catalogues of extreme wind and ice" },
  each: "pole",
  *check(plant, id) {
    const { tag, aboveGroundM } = plant.rowOf("pole", id);
    if (aboveGroundM === null) return;
    const asked = extremeCases
      .flatMap((one) => askedFor(plant, one))
      .filter(({ row }) => isOver(aboveGroundM, row.aboveM));
    const [first] = asked.sort((a, b) => a.row.aboveM - b.row.aboveM);
    if (!first) return;
    yield {
      subjects: [{ table: "pole", id }],
      message: `Pole ${tag} stands so high that ${asked.map(({ name }) => name).join(" and ")} must be checked, and the settings name none.`,
      measured: aboveGroundM,
      limit: first.row.aboveM,
      unit: "m",
      fixes: [],
      basis: catalogueBasis(first.row),
    };
  },
};

/** A case that the settings leave out and the document of the strength set asks for: the row that does so from the least height on. */
function askedFor(plant: Plant, condition: ExtremeCase) {
  if (extremeRow(plant, condition)) return [];
  const { basisDocument } = plant.rowOf("strengthSet", plant.settings().strengthSetId);
  const [row] = plant
    .all(condition)
    .map((id) => plant.rowOf(condition, id))
    .filter((one) => one.basisDocument === basisDocument)
    .sort((a, b) => a.aboveM - b.aboveM);
  return row ? [{ row, name: caseNames[condition] }] : [];
}

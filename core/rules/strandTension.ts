import { spanName } from "../plant/names.ts";
import { spanSag } from "../plant/spanSag.ts";
import { companySetting, type Rule } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const strandTension: Rule = {
  id: "strand-tension",
  title: "Strand tension under the district load stays within its part of the breaking strength",
  compares:
    "The tension of the strand at its supports under the district's load, against the allowed part of its rated breaking strength.",
  severity: "error",
  basis: companySetting("maxStrandFrac"),
  each: "span",
  *check(plant, id) {
    const { strandSectionId } = plant.rowOf("span", id);
    const sag = spanSag(plant, id);
    if (strandSectionId === null || sag.kind === "unknown") return;
    const limit = plant.settings().maxStrandFrac * sag.tension.breakingN;
    if (!isOver(sag.tension.supportN, limit)) return;
    const district = plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId);
    yield {
      subjects: [
        { table: "span", id },
        { table: "strandSection", id: strandSectionId },
      ],
      message: `In span ${spanName(plant, id)} the strand is pulled too hard under the load of ${district.name}.`,
      measured: sag.tension.supportN,
      limit,
      unit: "N",
      fixes: [],
    };
  },
};

import { chosenCases, strengthLimitFor } from "../plant/strength.ts";
import { companySetting, type Rule } from "./rule.ts";

const needed = [
  { part: "strand", condition: "loaded", words: "strand under the district's load" },
  { part: "strand", condition: "extremeWind", words: "strand in extreme wind" },
  { part: "strand", condition: "extremeIce", words: "strand under extreme ice" },
  { part: "strand", condition: "worker", words: "strand with a worker on it" },
  { part: "guy", condition: "loaded", words: "guys under the district's load" },
  { part: "anchor", condition: "loaded", words: "anchors under the district's load" },
  { part: "guy", condition: "extremeWind", words: "guys in extreme wind" },
  { part: "anchor", condition: "extremeWind", words: "anchors in extreme wind" },
  { part: "guy", condition: "extremeIce", words: "guys under extreme ice" },
  { part: "anchor", condition: "extremeIce", words: "anchors under extreme ice" },
  { part: "pullDifference", condition: "stringing", words: "the difference of pull between spans" },
] as const;

export const strengthSetIncomplete: Rule = {
  id: "strength-set-incomplete",
  title: "The strength set has a limit for strand, guys, anchors and differences of pull",
  compares:
    "The limits of the chosen strength set, against what is pulled: strand, guys, their anchors, and one span beside the next.",
  severity: "warning",
  basis: companySetting("strengthSetId"),
  each: "settings",
  *check(plant, id) {
    const set = plant.rowOf("strengthSet", plant.settings().strengthSetId);
    const chosen = chosenCases(plant);
    const missing = needed.filter(
      ({ part, condition }) => chosen.includes(condition) && !strengthLimitFor(plant, part, condition),
    );
    if (missing.length === 0) return;
    yield {
      subjects: [
        { table: "settings", id },
        { table: "strengthSet", id: set.id },
      ],
      message: `The strength set ${set.name} has no limit for ${missing.map((one) => one.words).join(", ")}: those are not checked.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

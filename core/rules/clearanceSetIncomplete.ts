import { clearanceLimitFor } from "../plant/clearance.ts";
import { surfaceWords } from "../plant/thingWords.ts";
import { companySetting, type Rule } from "./rule.ts";

const separations = [
  { surface: "supplyAtPole", words: "supply at the pole" },
  { surface: "supplyInSpan", words: "supply in the span" },
  { surface: "neutralAtPole", words: "neutral at the pole" },
  { surface: "neutralInSpan", words: "neutral in the span" },
  { surface: "communicationAtPole", words: "communication at the pole" },
  { surface: "communicationInSpan", words: "communication in the span" },
] as const;

/** Asked for only on a route that has such a thing on a pole: most sets say nothing of them. */
const wherePresent = [
  { kind: "streetLight", surface: "streetLightAtPole", words: "street-light brackets" },
  { kind: "dripLoop", surface: "dripLoopAtPole", words: "drip loops of street lights" },
] as const;

export const clearanceSetIncomplete: Rule = {
  id: "clearance-set-incomplete",
  title: "The clearance set has a limit for every separation and for open ground",
  compares:
    "The limits of the chosen clearance set, against open ground and the separations to supply, neutral and communication that are checked.",
  severity: "warning",
  basis: companySetting("clearanceSetId"),
  each: "settings",
  *check(plant, id) {
    const set = plant.rowOf("clearanceSet", plant.settings().clearanceSetId);
    const { groundSurface } = plant.settings();
    const missing = [
      ...separations.filter(({ surface }) => !clearanceLimitFor(plant, surface)).map(({ words }) => words),
      ...wherePresent
        .filter(({ kind, surface }) => {
          return plant.where("attachment", "kind", kind).length > 0 && !clearanceLimitFor(plant, surface);
        })
        .map(({ words }) => words),
      ...(clearanceLimitFor(plant, groundSurface) ? [] : [`open ground (${surfaceWords(groundSurface)})`]),
    ];
    if (missing.length === 0) return;
    yield {
      subjects: [
        { table: "settings", id },
        { table: "clearanceSet", id: set.id },
      ],
      message: `The clearance set ${set.name} has no limit against ${missing.join(", ")}: those are not checked.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

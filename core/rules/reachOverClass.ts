import { isBeyondReach, portLight } from "../plant/portLight.ts";
import { lightSubjects, unitAtPort } from "./dropWords.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";

export const reachOverClass: Rule = {
  id: "reach-over-class",
  title: "The fiber to the living unit is no longer than the class reaches",
  compares: "The fiber between hub and living unit with its coils and drop, against the reach of the optical class.",
  severity: "error",
  basis: { ...routeItself, document: "optical class of the feed" },
  each: "drop",
  *check(plant, id) {
    if (!isBeyondReach(plant, id)) return;
    const light = portLight(plant, id);
    if (light.kind === "unknown") return;
    const { reachM, system, name, ...source } = plant.rowOf("opticalClass", light.opticalClassId);
    yield {
      subjects: lightSubjects(plant, id),
      message: `${unitAtPort(plant, id)}, lies at the end of more fiber than ${system} ${name} reaches.`,
      measured: light.lengthM,
      limit: reachM,
      unit: "m",
      fixes: [],
      basis: catalogueBasis(source),
    };
  },
};

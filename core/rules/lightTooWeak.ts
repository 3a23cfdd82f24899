import { lightVerdict, lossWithMarginDb, portLight } from "../plant/portLight.ts";
import { lightSubjects, unitAtPort } from "./dropWords.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";

export const lightTooWeak: Rule = {
  id: "light-too-weak",
  title: "Loss to the living unit, with the company's margin, stays within the class",
  compares:
    "The greater loss of both ways between hub and living unit, with the company's margin, against the most the optical class bears.",
  severity: "error",
  basis: { ...routeItself, document: "optical class of the feed" },
  each: "drop",
  *check(plant, id) {
    if (lightVerdict(plant, id) !== "tooWeak") return;
    const light = portLight(plant, id);
    if (light.kind === "unknown") return;
    const { maxLossDb, system, name, ...source } = plant.rowOf("opticalClass", light.opticalClassId);
    const measured = lossWithMarginDb(plant, light);
    const way = light.upDb >= light.downDb ? "up" : "down";
    yield {
      subjects: lightSubjects(plant, id),
      message: `${unitAtPort(plant, id)}, loses more light on the way ${way} than ${system} ${name} allows.`,
      measured,
      limit: maxLossDb,
      unit: "dB",
      fixes: [],
      basis: catalogueBasis(source),
    };
  },
};

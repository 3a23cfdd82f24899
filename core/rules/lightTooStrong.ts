import { lightVerdict, portLight } from "../plant/portLight.ts";
import { lightSubjects, unitAtPort } from "./dropWords.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";

export const lightTooStrong: Rule = {
  id: "light-too-strong",
  title: "The way to the living unit loses enough light not to overload a receiver",
  compares: "The least loss from the hub to a living unit, against the least the optical class asks for.",
  severity: "error",
  basis: { ...routeItself, document: "optical class of the feed" },
  each: "drop",
  *check(plant, id) {
    if (lightVerdict(plant, id) !== "tooStrong") return;
    const light = portLight(plant, id);
    if (light.kind === "unknown") return;
    const { minLossDb, system, name, ...source } = plant.rowOf("opticalClass", light.opticalClassId);
    yield {
      subjects: lightSubjects(plant, id),
      message: `${unitAtPort(plant, id)}, gets more light than ${system} ${name} allows.`,
      measured: light.leastDb,
      limit: minLossDb,
      unit: "dB",
      fixes: [],
      basis: catalogueBasis(source),
    };
  },
};

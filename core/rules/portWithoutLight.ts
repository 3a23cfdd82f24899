import { lightVerdict, portLight } from "../plant/portLight.ts";
import { otherPortFix } from "./portFix.ts";
import { type Rule, routeItself } from "./rule.ts";

export const portWithoutLight: Rule = {
  id: "port-without-light",
  title: "Every port in use has light",
  compares:
    "The way of the light from each port in use, splitter by splitter and fiber by fiber, against a hub output at its end.",
  severity: "error",
  basis: routeItself,
  each: "drop",
  *check(plant, id) {
    if (lightVerdict(plant, id) !== "none") return;
    const light = portLight(plant, id);
    if (light.kind === "known") return;
    const drop = plant.rowOf("drop", id);
    const { address } = plant.rowOf("livingUnit", drop.livingUnitId);
    yield {
      subjects: [
        { table: "drop", id },
        { table: "terminal", id: drop.terminalId },
        { table: "livingUnit", id: drop.livingUnitId },
      ],
      message: `${address} gets no light. ${light.why}`,
      measured: null,
      limit: null,
      unit: "",
      fixes: otherPortFix(plant, drop),
    };
  },
};

import { parentUse } from "../plant/fiberTrace.ts";
import { type Rule, routeItself } from "./rule.ts";

export const lateralNotSpliced: Rule = {
  id: "lateral-not-spliced",
  title: "Fibers in use of a lateral cable are spliced to the cable it comes from",
  compares: "Each fiber in use of a lateral cable, against the splices at the closure the cable comes from.",
  severity: "error",
  basis: routeItself,
  each: "fiberUse",
  *check(plant, id) {
    const use = plant.rowOf("fiberUse", id);
    const { name, fromClosureId } = plant.rowOf("cable", use.cableId);
    const needsLight = use.purpose === "terminal" || use.purpose === "lateral";
    if (!needsLight || fromClosureId === null || parentUse(plant, use)) return;
    yield {
      subjects: [
        { table: "fiberUse", id },
        { table: "closure", id: fromClosureId },
      ],
      message: `Fiber ${use.fiber} of cable ${name} is in use but not spliced through at closure ${plant.rowOf("closure", fromClosureId).name}.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

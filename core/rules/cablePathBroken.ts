import { cablePath } from "../plant/cablePath.ts";
import { type Rule, routeItself } from "./rule.ts";

export const cablePathBroken: Rule = {
  id: "cable-path-broken",
  title: "A cable runs from span to span without a gap",
  compares: "The pole where each span of a cable's way ends, against the pole where the next one begins.",
  severity: "error",
  basis: routeItself,
  each: "cable",
  *check(plant, id) {
    const { gapAtPoleId } = cablePath(plant, id);
    if (gapAtPoleId === null) return;
    yield {
      subjects: [
        { table: "cable", id },
        { table: "pole", id: gapAtPoleId },
      ],
      message: `Cable ${plant.rowOf("cable", id).name} ends at pole ${plant.rowOf("pole", gapAtPoleId).tag} and goes on somewhere else.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

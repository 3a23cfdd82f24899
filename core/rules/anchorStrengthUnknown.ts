import { guyTensionN } from "../plant/poleGuys.ts";
import { strengthLimitFor } from "../plant/strength.ts";
import { type Rule, routeItself } from "./rule.ts";

export const anchorStrengthUnknown: Rule = {
  id: "anchor-strength-unknown",
  title: "What every anchor holds is known",
  compares: "What the anchor of a guy holds, against the limit the strength set has for anchors.",
  severity: "warning",
  basis: { ...routeItself, document: "strength set of the settings" },
  each: "guy",
  *check(plant, id) {
    const { poleId, anchorN } = plant.rowOf("guy", id);
    if (anchorN !== null || guyTensionN(plant, id, "loaded") === 0 || !strengthLimitFor(plant, "anchor", "loaded"))
      return;
    yield {
      subjects: [
        { table: "guy", id },
        { table: "pole", id: poleId },
      ],
      message: `At pole ${plant.rowOf("pole", poleId).tag} nobody told what the anchor of the guy holds: it is not checked.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

import { clearanceLimitFor } from "../plant/clearance.ts";
import { poleSeparation } from "../plant/separation.ts";
import type { Rule } from "./rule.ts";

/**
 * Voltage to ground up to which the separation limits of a clearance set hold as they stand.
 *
 * @source NESC T235-5, T238-1, from memory: 40 in up to 8.7 kV, above that 0.4 in more for each kV
 */
const coveredV = 8700;

export const supplyVoltageOverLimit: Rule = {
  id: "supply-voltage-over-limit",
  title: "The supply limits cover the voltage on the pole",
  compares: "The voltage of a supply wire on a pole, against the 8.7 kV up to which the limits hold as they stand.",
  severity: "warning",
  basis: { document: "NESC (IEEE C2)", clause: "T235-5, T238-1", edition: "2017/2023 numbering", mark: "memory" },
  each: "attachment",
  *check(plant, id) {
    const { voltageV, poleId, kind } = plant.rowOf("attachment", id);
    if (voltageV <= coveredV || poleSeparation(plant, id)?.party !== "supply") return;
    if (!clearanceLimitFor(plant, "supplyAtPole")) return;
    yield {
      subjects: [
        { table: "attachment", id },
        { table: "pole", id: poleId },
      ],
      message: `The ${kind} at pole ${plant.rowOf("pole", poleId).tag} has a higher voltage than the supply limits are for: it needs more than they say.`,
      measured: voltageV,
      limit: coveredV,
      unit: "V",
      fixes: [],
    };
  },
};

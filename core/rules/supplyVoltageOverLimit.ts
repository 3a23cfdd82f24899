import { poleSeparation, separationLimitFor } from "../plant/separation.ts";
import { kindWords } from "../plant/thingWords.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";

export const supplyVoltageOverLimit: Rule = {
  id: "supply-voltage-over-limit",
  title: "The supply limits cover the voltage on the pole",
  compares:
    "The voltage of a supply wire on a pole, against the voltage a supply limit covers where it does not say how much more is asked beyond.",
  severity: "warning",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "attachment",
  *check(plant, id) {
    const other = plant.rowOf("attachment", id);
    const { voltageV, poleId, kind } = other;
    if (voltageV === 0 || poleSeparation(plant, id)?.party !== "supply") return;
    const [short] = [separationLimitFor(plant, other, "AtPole"), separationLimitFor(plant, other, "InSpan")].flatMap(
      (limit) => (limit && limit.coversV > 0 && voltageV > limit.coversV && limit.moreMPerV === 0 ? [limit] : []),
    );
    if (!short) return;
    yield {
      subjects: [
        { table: "attachment", id },
        { table: "pole", id: poleId },
      ],
      message: `The ${kindWords(kind)} at pole ${plant.rowOf("pole", poleId).tag} has a higher voltage than the supply limits are for: it needs more than they say.`,
      measured: voltageV,
      limit: short.coversV,
      unit: "V",
      fixes: [],
      basis: catalogueBasis(short),
    };
  },
};

import { type StrengthCase, strengthCases } from "../model/catalogueRows.ts";
import { crossingClearance } from "../plant/clearance.ts";
import type { Plant } from "../plant/plant.ts";
import { portLight } from "../plant/portLight.ts";
import { spanSag } from "../plant/spanSag.ts";
import { stateIn, strengthLimitFor } from "../plant/strength.ts";
import type { Finding } from "../rules/finding.ts";
import type { FigureRef } from "./explanation.ts";

/** The figure a finding compares, where it has an explanation; null where the rule compares plain rows. */
export function figureOfFinding(
  plant: Plant,
  { ruleId, subjects }: Pick<Finding, "ruleId" | "subjects">,
): FigureRef | null {
  const id = subjects[0]?.id ?? "";
  switch (ruleId) {
    case "crossing-clearance": {
      const clearance = crossingClearance(plant, id);
      return clearance.kind === "unknown" ? null : { figure: "clearance", id, part: clearance.worstCase };
    }
    case "strand-tension":
      return { figure: "tensionShare", id, part: tightestCase(plant, id) };
    case "drop-over-reach":
      return { figure: "dropRun", id };
    case "cable-longer-than-reel":
      return { figure: "sheath", id };
    case "light-too-weak":
    case "light-too-strong": {
      const light = portLight(plant, id);
      return { figure: light.kind === "known" && light.upDb >= light.downDb ? "lightUp" : "lightDown", id };
    }
    case "supply-separation-at-pole":
    case "communication-separation-at-pole":
      return subjects[0]?.table === "attachment" ? { figure: "poleSeparation", id } : null;
    case "supply-separation-in-span":
    case "communication-separation-in-span": {
      const wire = subjects.find((one) => one.table === "attachment");
      return wire ? { figure: "spanSeparation", id, wireId: wire.id } : null;
    }
    default:
      return null;
  }
}

/** The case in which a span's strand comes nearest to, or is farthest over, what the strength set allows. */
function tightestCase(plant: Plant, spanId: string): StrengthCase {
  const sag = spanSag(plant, spanId);
  if (sag.kind === "unknown") return "loaded";
  const usedFrac = (condition: StrengthCase): number =>
    stateIn(sag, condition).supportN /
    (strengthLimitFor(plant, "strand", condition)?.limitFrac ?? Number.POSITIVE_INFINITY);
  return strengthCases.toSorted((a, b) => usedFrac(b) - usedFrac(a))[0] ?? "loaded";
}

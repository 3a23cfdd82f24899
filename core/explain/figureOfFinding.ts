import type { ClearanceCase, ClearanceSurface } from "../model/clearanceRows.ts";
import {
  type BindingCase,
  bindingCases,
  type Clearance,
  clearanceLimitFor,
  crossingClearance,
  groundClearance,
} from "../plant/clearance.ts";
import { dropClearance, dropSurface } from "../plant/dropClearance.ts";
import type { Plant } from "../plant/plant.ts";
import { portLight } from "../plant/portLight.ts";
import { governingCase } from "../plant/strength.ts";
import { structureClearance, structureSurfaces, undersideClearance } from "../plant/structureClearance.ts";
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
      const part = leastSpare(plant, plant.rowOf("crossing", id).surface, crossingClearance(plant, id));
      return part && { figure: "clearance", id, part };
    }
    case "ground-clearance": {
      const part = leastSpare(plant, plant.settings().groundSurface, groundClearance(plant, id));
      return part && { figure: "groundClearance", id, part };
    }
    case "structure-clearance":
      return structureFigure(plant, id);
    case "drop-clearance": {
      const dropCrossingId = subjects[1]?.id ?? "";
      const surface = dropSurface(plant, dropCrossingId);
      const part = leastSpare(plant, surface, dropClearance(plant, id, dropCrossingId));
      return part && { figure: "dropClearance", id, dropCrossingId, part };
    }
    case "structure-swept":
      return { figure: "structureBeside", id };
    case "guy-overloaded":
      return { figure: "guyTension", id };
    case "strand-tension":
      return { figure: "tensionShare", id, part: governingCase(plant, id)?.condition ?? "loaded" };
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
    case "street-light-separation":
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

/** What the finding of a structure compares: its distance beside the line where that has a limit, else the line's height over it. */
function structureFigure(plant: Plant, id: string): FigureRef | null {
  const { besideM, kind } = plant.rowOf("structure", id);
  if (besideM > 0 && clearanceLimitFor(plant, structureSurfaces(kind).beside)) return { figure: "structureBeside", id };
  const surfaces = structureSurfaces(kind);
  const [over] = binding(plant, surfaces.over, structureClearance(plant, id));
  const [under] = binding(plant, surfaces.under, undersideClearance(plant, id));
  if (over && under && spareM(under) > spareM(over)) return { figure: "undersideClearance", id, part: under.condition };
  const part = leastSpare(plant, surfaces.over, structureClearance(plant, id));
  return part && { figure: "structureClearance", id, part };
}

function binding(plant: Plant, surface: ClearanceSurface, clearance: Clearance | null): readonly BindingCase[] {
  return clearance?.kind === "known" ? bindingCases(plant, surface, clearance) : [];
}

function spareM({ measuredM, limit }: BindingCase): number {
  return measuredM - limit.limitM;
}

/** The case with the least to spare, which is what a finding measures; null where nobody can tell. */
function leastSpare(plant: Plant, surface: ClearanceSurface, clearance: Clearance | null): ClearanceCase | null {
  if (clearance?.kind !== "known") return null;
  return binding(plant, surface, clearance)[0]?.condition ?? clearance.worstCase;
}

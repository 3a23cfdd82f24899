import { type ClearanceSurface, clearanceCases } from "../model/clearanceRows.ts";
import {
  type Clearance,
  clearanceLimitFor,
  clearanceOver,
  type Hung,
  type Passage,
  type Surface,
  type Unknown,
} from "./clearance.ts";
import { dropRunM } from "./dropView.ts";
import { groundAtM, groundLine } from "./groundLine.ts";
import { lineHeight } from "./lineHeight.ts";
import type { Plant } from "./plant.ts";

/** A drop over one thing it passes. */
type DropPassage = Passage & {
  /** Distance of the drop in plan, m; stretches count from the building. */
  readonly runM: number;
  readonly sagM: number;
  readonly hung: Hung;
};

/** How a drop hangs over something it passes: from the line in each of its cases, at the company's sag of a drop. */
export function dropPassage(plant: Plant, dropId: string, dropCrossingId: string): DropPassage | Unknown {
  const { terminalId, livingUnitId } = plant.rowOf("drop", dropId);
  const { spanId, offsetM } = plant.rowOf("terminal", terminalId);
  const { attachHeightM, groundM } = plant.rowOf("livingUnit", livingUnitId);
  const { fromUnitM, widthM, surface, surfaceM } = plant.rowOf("dropCrossing", dropCrossingId);
  const line = lineHeight(plant, spanId);
  const ground = groundLine(plant, spanId);
  if (line.kind === "unknown") return line;
  if (ground.kind === "unknown") return ground;
  if (attachHeightM === null) return { kind: "unknown", why: "Nobody told how high the drop is attached." };
  if (groundM === null) return { kind: "unknown", why: "Nobody measured the ground at the building." };
  if (surface === "roof" && surfaceM === null) return { kind: "unknown", why: "Nobody measured the roof." };
  const runM = dropRunM(plant, dropId);
  if (!(runM > 0)) return { kind: "unknown", why: "The drop has no run." };
  const sagM = plant.settings().dropSagFrac * runM;
  const fromUnit = (atM: number) => Math.min(Math.max(atM, 0), runM);
  const groundHereM = groundAtM(ground, Math.min(offsetM, line.lengthM));
  const hung = {
    cornersM: [],
    strandAssumed: line.strandAssumed,
    undersideM: (atM: number, condition: Parameters<typeof line.undersideM>[1]) => {
      const part = atM / runM;
      const endM = line.undersideM(Math.min(offsetM, line.lengthM), condition);
      return (groundM + attachHeightM) * (1 - part) + endM * part - 4 * sagM * part * (1 - part);
    },
  };
  const over = {
    ...easedAtEdges(plant, dropSurface(plant, dropCrossingId), [fromUnitM - widthM / 2, fromUnitM + widthM / 2]),
    heightAtM: (atM: number) => surfaceM ?? groundM + ((groundHereM - groundM) * atM) / runM,
    isAssumed: surfaceM === null,
  };
  const stretches = [[fromUnit(fromUnitM - widthM / 2), fromUnit(fromUnitM + widthM / 2)]] as const;
  return { kind: "known", runM, sagM, hung, over, stretches };
}

/**
 * Least height of a drop over something it passes, all cases of the line it hangs from; the drop itself hangs at the company's sag in
 * each. Unlevelled surfaces are taken on the straight line between the ground at the terminal and at the building.
 */
export function dropClearance(plant: Plant, dropId: string, dropCrossingId: string): Clearance {
  const passage = dropPassage(plant, dropId, dropCrossingId);
  return passage.kind === "unknown" ? passage : clearanceOver(passage.hung, passage);
}

/**
 * How much less is asked near the edges of what a drop crosses, and where that bends: a limit with less at its edges rises to the whole
 * over the run it names, at the latest in the middle.
 */
function easedAtEdges(
  plant: Plant,
  surface: ClearanceSurface,
  [nearM, farM]: readonly [nearM: number, farM: number],
): Pick<Surface, "cornersM" | "easedM"> {
  const cornersM = clearanceCases.flatMap((condition) => {
    const limit = clearanceLimitFor(plant, surface, condition);
    if (!limit || limit.edgeLimitM === 0) return [];
    const runM = Math.min(limit.edgeRunM, (farM - nearM) / 2);
    return [nearM + runM, farM - runM];
  });
  return {
    cornersM: [...new Set(cornersM)],
    easedM(atM, condition) {
      const limit = clearanceLimitFor(plant, surface, condition);
      if (!limit || limit.edgeLimitM === 0 || limit.edgeRunM === 0) return 0;
      const inM = Math.max(Math.min(atM - nearM, farM - atM), 0);
      const rise = Math.min(inM / Math.min(limit.edgeRunM, (farM - nearM) / 2), 1);
      return (limit.limitM - limit.edgeLimitM) * (1 - rise);
    },
  };
}

/**
 * What the limit of a drop over something is filed under: its own where the clearance set has one. A building counts as too low for a
 * residential driveway where the drop is attached lower than the line must pass over one.
 */
export function dropSurface(plant: Plant, dropCrossingId: string): ClearanceSurface {
  const { surface, livingUnitId } = plant.rowOf("dropCrossing", dropCrossingId);
  const has = (own: ClearanceSurface) => clearanceLimitFor(plant, own) !== undefined;
  switch (surface) {
    case "roof":
      return "dropRoof";
    case "road":
      return has("dropRoad") ? "dropRoad" : "road";
    case "homeDriveway": {
      if (has("dropDriveway")) return "dropDriveway";
      const { attachHeightM } = plant.rowOf("livingUnit", livingUnitId);
      const lineM = clearanceLimitFor(plant, "homeDriveway")?.limitM;
      const isLow = attachHeightM !== null && lineM !== undefined && attachHeightM < lineM;
      return isLow && has("dropLowDriveway") ? "dropLowDriveway" : "homeDriveway";
    }
    default:
      return surface;
  }
}

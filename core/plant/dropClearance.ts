import type { ClearanceSurface, LineSurface } from "../model/catalogueRows.ts";
import {
  type Clearance,
  clearanceLimitFor,
  clearanceOver,
  type Hung,
  type Passage,
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
  const { fromUnitM, widthM, surfaceM } = plant.rowOf("dropCrossing", dropCrossingId);
  const line = lineHeight(plant, spanId);
  const ground = groundLine(plant, spanId);
  if (line.kind === "unknown") return line;
  if (ground.kind === "unknown") return ground;
  if (attachHeightM === null) return { kind: "unknown", why: "Nobody told how high the drop is attached." };
  if (groundM === null) return { kind: "unknown", why: "Nobody measured the ground at the building." };
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
    cornersM: [],
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

/** What the limit of a drop over a surface is filed under: its own where the clearance set has one. */
export function dropSurface(plant: Plant, surface: LineSurface): ClearanceSurface {
  const own = surface === "road" ? "dropRoad" : surface === "driveway" ? "dropDriveway" : null;
  return own !== null && clearanceLimitFor(plant, own) ? own : surface;
}

import type { Plant } from "../plant/plant.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { explainSheath, explainTerminalStation } from "./explainAlong.ts";
import { explainBeside } from "./explainBeside.ts";
import { explainClearance, explainGroundClearance, explainStructureClearance } from "./explainClearance.ts";
import { explainDropCut, explainDropRun } from "./explainDrop.ts";
import { explainDropClearance } from "./explainDropClearance.ts";
import { explainGuy } from "./explainGuy.ts";
import { explainHeightBound } from "./explainHeightBound.ts";
import { explainLight } from "./explainLight.ts";
import { explainLoad } from "./explainLoad.ts";
import { explainMakeReadyTotal } from "./explainMakeReadyTotal.ts";
import { explainSag } from "./explainSag.ts";
import { explainPoleSeparation, explainSpanSeparation } from "./explainSeparation.ts";
import { explainSupportTension, explainTensionShare } from "./explainSupportTension.ts";
import { explainTension } from "./explainTension.ts";
import { explainUnderside } from "./explainUnderside.ts";
import type { Explanation, FigureRef, NoExplanation } from "./explanation.ts";

/** The reason of a figure as the route stands; null where its row is gone. */
export function explain(plant: Plant, ref: FigureRef, units: UnitSystem): Explanation | NoExplanation | null {
  if (!plant.row(tableOf(ref), ref.id)) return null;
  switch (ref.figure) {
    case "sag":
      return explainSag(plant, ref.id, ref.part, units);
    case "tension":
      return explainTension(plant, ref.id, ref.part, units);
    case "load":
      return explainLoad(plant, ref.id, ref.part, units);
    case "tensionShare":
      return explainTensionShare(plant, ref.id, ref.part, units);
    case "supportTension":
      return explainSupportTension(plant, ref.id, ref.part, units);
    case "clearance":
      return explainClearance(plant, ref.id, ref.part, units);
    case "groundClearance":
      return explainGroundClearance(plant, ref.id, ref.part, units);
    case "structureClearance":
      return explainStructureClearance(plant, ref.id, ref.part, units);
    case "undersideClearance":
      return explainUnderside(plant, ref.id, ref.part, units);
    case "structureBeside":
      return explainBeside(plant, ref.id, units);
    case "dropClearance":
      return plant.row("dropCrossing", ref.dropCrossingId)
        ? explainDropClearance(plant, [ref.id, ref.dropCrossingId], ref.part, units)
        : null;
    case "guyTension":
      return explainGuy(plant, ref.id, units);
    case "poleSeparation":
      return explainPoleSeparation(plant, ref.id, units);
    case "spanSeparation":
      return plant.row("attachment", ref.wireId) ? explainSpanSeparation(plant, ref.id, ref.wireId, units) : null;
    case "heightBound":
      return explainHeightBound(plant, ref, units);
    case "makeReadyTotal":
      return explainMakeReadyTotal(plant, ref.id, ref.plan, units);
    case "lightUp":
      return explainLight(plant, ref.id, "up", units);
    case "lightDown":
      return explainLight(plant, ref.id, "down", units);
    case "dropRun":
      return explainDropRun(plant, ref.id, units);
    case "dropCut":
      return explainDropCut(plant, ref.id, units);
    case "terminalStation":
      return explainTerminalStation(plant, ref.id, units);
    case "sheath":
      return explainSheath(plant, ref.id, units);
  }
}

function tableOf({ figure }: FigureRef) {
  switch (figure) {
    case "sag":
    case "tension":
    case "load":
    case "tensionShare":
    case "supportTension":
    case "spanSeparation":
    case "groundClearance":
      return "span";
    case "structureClearance":
    case "undersideClearance":
    case "structureBeside":
      return "structure";
    case "guyTension":
      return "guy";
    case "clearance":
      return "crossing";
    case "poleSeparation":
      return "attachment";
    case "heightBound":
    case "makeReadyTotal":
      return "pole";
    case "lightUp":
    case "lightDown":
    case "dropRun":
    case "dropCut":
    case "dropClearance":
      return "drop";
    case "terminalStation":
      return "terminal";
    case "sheath":
      return "cable";
  }
}

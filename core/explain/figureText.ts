import { clearanceCases } from "../model/clearanceRows.ts";
import { strengthCases, windyCases } from "../model/loadRows.ts";
import type { FigureRef } from "./explanation.ts";

/** A figure by name as one text: `clearance:crossing-3:iced`, `dropRun:drop-7`, `heightBound:pole-4:atLeast:road`. */
export function figureText(ref: FigureRef): string {
  return [ref.figure, ref.id, ...furtherParts(ref)].join(":");
}

function furtherParts(ref: FigureRef): readonly (string | number)[] {
  switch (ref.figure) {
    case "heightBound":
      return [ref.part, ref.bound];
    case "makeReadyTotal":
      return [ref.plan];
    case "spanSeparation":
      return [ref.wireId];
    case "dropClearance":
      return [ref.part, ref.dropCrossingId];
    default:
      return "part" in ref ? [ref.part] : [];
  }
}

/** The figure that such a text names; null where it names none. */
export function figureOfText(text: string): FigureRef | null {
  const [figure, id = "", more, ...rest] = text.split(":");
  if (id === "") return null;
  if (figure === "heightBound") {
    const part = (["atLeast", "atMost"] as const).find((one) => one === more);
    return part && rest.length > 0 ? { figure, id, part, bound: rest.join(":") } : null;
  }
  if (figure === "dropClearance") {
    const part = clearanceCases.find((one) => one === more);
    return part && rest.length > 0 ? { figure, id, part, dropCrossingId: rest.join(":") } : null;
  }
  if (rest.length > 0) return null;
  switch (figure) {
    case "load": {
      const part = windyCases.find((one) => one === more);
      return part ? { figure, id, part } : null;
    }
    case "clearance":
    case "groundClearance":
    case "structureClearance":
    case "undersideClearance": {
      const part = clearanceCases.find((one) => one === more);
      return part ? { figure, id, part } : null;
    }
    case "sag":
    case "tension":
    case "tensionShare":
    case "supportTension": {
      const part = strengthCases.find((one) => one === more);
      return part ? { figure, id, part } : null;
    }
    case "spanSeparation":
      return more ? { figure, id, wireId: more } : null;
    case "makeReadyTotal":
      return more !== undefined && /^\d+$/.test(more) ? { figure, id, plan: Number(more) } : null;
    case "lightUp":
    case "lightDown":
    case "dropRun":
    case "dropCut":
    case "terminalStation":
    case "poleSeparation":
    case "sheath":
    case "guyTension":
    case "structureBeside":
      return more === undefined ? { figure, id } : null;
    default:
      return null;
  }
}

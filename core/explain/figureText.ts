import { clearanceCases, strengthCases } from "../model/catalogueRows.ts";
import type { FigureRef } from "./explanation.ts";

/** A figure by name as one text: `clearance:crossing-3:iced`, `dropRun:drop-7`. */
export function figureText(ref: FigureRef): string {
  const more = "part" in ref ? [ref.part] : "wireId" in ref ? [ref.wireId] : [];
  return [ref.figure, ref.id, ...more].join(":");
}

/** The figure that such a text names; null where it names none. */
export function figureOfText(text: string): FigureRef | null {
  const [figure, id = "", more, ...rest] = text.split(":");
  if (id === "" || rest.length > 0) return null;
  switch (figure) {
    case "sag":
    case "tension":
    case "clearance": {
      const part = clearanceCases.find((one) => one === more);
      return part ? { figure, id, part } : null;
    }
    case "tensionShare":
    case "supportTension": {
      const part = strengthCases.find((one) => one === more);
      return part ? { figure, id, part } : null;
    }
    case "spanSeparation":
      return more ? { figure, id, wireId: more } : null;
    case "lightUp":
    case "lightDown":
    case "dropRun":
    case "dropCut":
    case "terminalStation":
    case "poleSeparation":
    case "sheath":
      return more === undefined ? { figure, id } : null;
    default:
      return null;
  }
}

import { cablesInSpan } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import type { Fix } from "./rule.ts";

/**
 * A terminal to another place of its cable; no fix where the cable does not pass there or the place is not between
 * the poles.
 *
 * @param offsetM  from the span's first pole, m
 */
export function moveTerminalFix(
  plant: Plant,
  terminalId: string,
  label: string,
  spanId: string,
  offsetM: number,
): readonly Fix[] {
  const { cableId, terminalModelId } = plant.rowOf("terminal", terminalId);
  const halfM = plant.rowOf("terminalModel", terminalModelId).lengthM / 2;
  const { lengthM } = plant.rowOf("span", spanId);
  const between = offsetM - halfM > 0 && offsetM + halfM < lengthM;
  if (!between || !cablesInSpan(plant, spanId).includes(cableId)) return [];
  return [{ label, command: "terminal.move", input: { terminalId, spanId, offsetM } }];
}

/** A terminal to the standard distance from the pole it hangs at; no fix in a span too short for that. */
export function standardDistanceFix(plant: Plant, terminalId: string): readonly Fix[] {
  const { spanId, offsetM } = plant.rowOf("terminal", terminalId);
  const { lengthM } = plant.rowOf("span", spanId);
  const { standoffM } = plant.settings();
  if (standoffM > lengthM / 2) return [];
  const atFirstPole = offsetM <= lengthM / 2;
  const place = atFirstPole ? standoffM : lengthM - standoffM;
  return moveTerminalFix(plant, terminalId, "Move to the standard distance", spanId, place);
}

import type { Plant } from "../plant/plant.ts";
import { portsOf } from "../plant/terminalView.ts";
import type { Fix } from "./rule.ts";

type PortPlace = { readonly terminalId: string; readonly port: number };

/** A drop to a port that holds no other; no fix where another does, where it is held for somebody, or where the face has no such port. */
export function freePortFix(plant: Plant, dropId: string, to: PortPlace, label: string): readonly Fix[] {
  const place = portsOf(plant, to.terminalId).find((one) => one.port === to.port);
  if (!place || place.isReserved || place.dropIds.length > 0) return [];
  return [{ label, command: "drop.move", input: { dropId, ...to } }];
}

import type { Plant } from "../plant/plant.ts";

/** A drop as a finding names it: "on the way from terminal T1 to 1 Test Rd". */
export function dropWords(plant: Plant, dropId: string): string {
  const { terminalId, livingUnitId } = plant.rowOf("drop", dropId);
  return `on the way from terminal ${plant.rowOf("terminal", terminalId).name} to ${plant.rowOf("livingUnit", livingUnitId).address}`;
}

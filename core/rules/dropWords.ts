import type { Plant } from "../plant/plant.ts";
import type { Subject } from "./rule.ts";

/** A drop as a finding names it: "on the way from terminal T1 to 1 Test Rd". */
export function dropWords(plant: Plant, dropId: string): string {
  const { terminalId, livingUnitId } = plant.rowOf("drop", dropId);
  return `on the way from terminal ${plant.rowOf("terminal", terminalId).name} to ${plant.rowOf("livingUnit", livingUnitId).address}`;
}

/** A living unit as a finding about its light names it: "1 Test Rd, port 3 of terminal T1". */
export function unitAtPort(plant: Plant, dropId: string): string {
  const { terminalId, port, livingUnitId } = plant.rowOf("drop", dropId);
  return `${plant.rowOf("livingUnit", livingUnitId).address}, port ${port} of terminal ${plant.rowOf("terminal", terminalId).name}`;
}

/** What a finding about the light of a drop is about: the drop, its terminal, its living unit. */
export function lightSubjects(plant: Plant, dropId: string): readonly Subject[] {
  const { terminalId, livingUnitId } = plant.rowOf("drop", dropId);
  return [
    { table: "drop", id: dropId },
    { table: "terminal", id: terminalId },
    { table: "livingUnit", id: livingUnitId },
  ];
}

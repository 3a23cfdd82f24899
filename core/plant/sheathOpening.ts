import type { Slack } from "../model/tables.ts";
import { sheathToM } from "./cablePath.ts";
import { defineQuery, type Plant } from "./plant.ts";

/** What of a coil is opened: its middle, m of sheath from the cable's feed end. */
export type SheathOpening = {
  readonly coilFromM: number;
  readonly fromM: number;
  readonly toM: number;
  readonly coilToM: number;
};

/** The coil a terminal's opening is taken from; null where none is drawn. */
export function coilOfTerminal(plant: Plant, terminalId: string): Slack | null {
  const [coilId] = plant.where("slack", "terminalId", terminalId);
  return coilId === undefined ? null : plant.rowOf("slack", coilId);
}

/** The middle of a terminal's coil, where the loop is opened: common practice, no source. Null where there is no coil on its cable. */
export const sheathOpening = defineQuery("sheath-opening", (plant, terminalId): SheathOpening | null => {
  const coil = coilOfTerminal(plant, terminalId);
  const coilToM = coil && sheathToM(plant, coil.cableId, coil.spanId, coil.offsetM);
  if (coil === null || coilToM === null) return null;
  const middleM = coilToM - coil.storedM / 2;
  const { openingM } = plant.settings();
  return {
    coilFromM: coilToM - coil.storedM,
    fromM: middleM - openingM / 2,
    toM: middleM + openingM / 2,
    coilToM,
  };
});

import { dropCutM, dropRunM } from "../../../core/plant/dropView.ts";
import { portLight } from "../../../core/plant/portLight.ts";
import { byCommand, computed, explained, figures, reference, told, yesNo } from "./builders.ts";
import type { Column } from "./column.ts";
import { plainMeasure, runMeasure } from "./measures.ts";

const table = "drop";

export const dropColumns: readonly Column[] = [
  told(
    "unit",
    "Living unit",
    (plant, id) => plant.rowOf("livingUnit", plant.rowOf(table, id).livingUnitId).address,
    240,
  ),
  reference(
    { table, column: "terminalId" },
    "Terminal",
    { table: "terminal", column: "name" },
    {
      widthPx: 110,
      steps: byCommand("drop.move", (plant, dropId, terminalId) => ({
        dropId,
        terminalId,
        port: plant.rowOf(table, dropId).port,
      })),
    },
  ),
  figures({ table, column: "port" }, "Port", plainMeasure("", 0), {
    widthPx: 70,
    steps: byCommand("drop.move", (plant, dropId, port) => ({
      dropId,
      terminalId: plant.rowOf(table, dropId).terminalId,
      port,
    })),
  }),
  reference({ table, column: "dropTypeId" }, "Drop cable", { table: "dropType", column: "name" }, { widthPx: 200 }),
  explained(computed("run", "Distance", runMeasure, dropRunM), (_, id) => ({ figure: "dropRun", id })),
  explained(computed("cut", "Drop to cut", runMeasure, dropCutM, 120), (_, id) => ({ figure: "dropCut", id })),
  explained(
    computed(
      "down",
      "Loss down",
      plainMeasure("dB", 2),
      (plant, id) => {
        const light = portLight(plant, id);
        return light.kind === "known" ? light.downDb : null;
      },
      110,
    ),
    (_, id) => ({ figure: "lightDown", id }),
  ),
  explained(
    computed(
      "up",
      "Loss up",
      plainMeasure("dB", 2),
      (plant, id) => {
        const light = portLight(plant, id);
        return light.kind === "known" ? light.upDb : null;
      },
      110,
    ),
    (_, id) => ({ figure: "lightUp", id }),
  ),
  yesNo({ table, column: "pinned" }, "Pinned", {
    steps: byCommand("drop.pin", (_, dropId, pinned) => ({ dropId, pinned })),
  }),
];

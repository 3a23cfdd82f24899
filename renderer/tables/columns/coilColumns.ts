import { stationM } from "../../../core/plant/cablePath.ts";
import { spanName } from "../../../core/plant/names.ts";
import { byCommand, computed, figures, told } from "./builders.ts";
import type { Column } from "./column.ts";
import { runMeasure } from "./measures.ts";

const table = "slack";

export const coilColumns: readonly Column[] = [
  told("span", "Span", (plant, id) => spanName(plant, plant.rowOf(table, id).spanId), 170),
  told("kind", "What for", (plant, id) => plant.rowOf(table, id).kind),
  told("terminal", "Terminal", (plant, id) => {
    const { terminalId } = plant.rowOf(table, id);
    return terminalId === null ? "" : plant.rowOf("terminal", terminalId).name;
  }),
  told("cable", "Cable", (plant, id) => plant.rowOf("cable", plant.rowOf(table, id).cableId).name, 110),
  figures({ table, column: "storedM" }, "Sheath stored", runMeasure, {
    widthPx: 130,
    steps: byCommand("slack.set", (_, slackId, storedM) => ({ slackId, storedM })),
  }),
  figures({ table, column: "offsetM" }, "From first pole", runMeasure, {
    widthPx: 140,
    steps: byCommand("slack.move", (plant, slackId, offsetM) => ({
      slackId,
      spanId: plant.rowOf(table, slackId).spanId,
      offsetM,
    })),
  }),
  computed(
    "station",
    "From the feed end",
    runMeasure,
    (plant, id) => {
      const { cableId, spanId, offsetM } = plant.rowOf(table, id);
      return stationM(plant, cableId, spanId, offsetM);
    },
    150,
  ),
];

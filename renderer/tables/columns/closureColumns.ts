import { stationM } from "../../../core/plant/cablePath.ts";
import { spanName } from "../../../core/plant/names.ts";
import { computed, figures, told, words } from "./builders.ts";
import type { Column } from "./column.ts";
import { plainMeasure, runMeasure } from "./measures.ts";

const table = "closure";

export const closureColumns: readonly Column[] = [
  words({ table, column: "name" }, "Closure", { mayBeEmpty: false, widthPx: 110 }),
  told("cable", "Cable", (plant, id) => plant.rowOf("cable", plant.rowOf(table, id).cableId).name, 110),
  told("span", "Span", (plant, id) => spanName(plant, plant.rowOf(table, id).spanId), 170),
  figures({ table, column: "offsetM" }, "From first pole", runMeasure, { widthPx: 140 }),
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
  computed(
    "fibers",
    "Fibers spliced",
    plainMeasure("", 0),
    (plant, id) => plant.where("fiberUse", "closureId", id).length,
    120,
  ),
  words({ table, column: "note" }, "Note", { widthPx: 220 }),
];

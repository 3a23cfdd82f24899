import { spansAtPole } from "../../../core/plant/geometry.ts";
import { strandAtPole } from "../../../core/plant/strandHeight.ts";
import { byCommand, computed, figures, words, yesNo } from "./builders.ts";
import type { Column } from "./column.ts";
import { heightMeasure, plainMeasure, runMeasure } from "./measures.ts";

const table = "pole";

export const poleColumns: readonly Column[] = [
  words({ table, column: "tag" }, "Tag", {
    widthPx: 110,
    mayBeEmpty: false,
    steps: byCommand("pole.rename", (_, poleId, tag) => ({ poleId, tag })),
  }),
  words({ table, column: "poleClass" }, "Class", { widthPx: 80 }),
  figures({ table, column: "aboveGroundM" }, "Above ground", heightMeasure, { mayBeEmpty: true, widthPx: 130 }),
  figures({ table, column: "groundM" }, "Ground", heightMeasure, { mayBeEmpty: true }),
  words({ table, column: "owner" }, "Owner"),
  words({ table, column: "line" }, "Line", { widthPx: 90 }),
  figures({ table, column: "order" }, "Order", plainMeasure("", 0), { widthPx: 70 }),
  yesNo({ table, column: "terminalAllowed" }, "Terminal allowed", { widthPx: 130 }),
  computed("spans", "Spans", plainMeasure("", 0), (plant, id) => spansAtPole(plant, id).length, 70),
  computed("strand", "Our strand", heightMeasure, (plant, id) => strandAtPole(plant, id).heightM, 120),
  figures({ table, column: "eastM" }, "East", runMeasure, {
    steps: byCommand("pole.move", (plant, poleId, eastM) => ({
      poleId,
      eastM,
      northM: plant.rowOf(table, poleId).northM,
    })),
  }),
  figures({ table, column: "northM" }, "North", runMeasure, {
    steps: byCommand("pole.move", (plant, poleId, northM) => ({
      poleId,
      eastM: plant.rowOf(table, poleId).eastM,
      northM,
    })),
  }),
  words({ table, column: "note" }, "Note", { widthPx: 220 }),
];

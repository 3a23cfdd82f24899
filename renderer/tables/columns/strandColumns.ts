import { choice, computed, figures, reference, words } from "./builders.ts";
import type { Column } from "./column.ts";
import { forceMeasure, plainMeasure, runMeasure } from "./measures.ts";

const table = "strandSection";

export const strandColumns: readonly Column[] = [
  words({ table, column: "name" }, "Section", { mayBeEmpty: false }),
  reference({ table, column: "strandTypeId" }, "Strand", { table: "strandType", column: "name" }, { widthPx: 220 }),
  figures({ table, column: "stringingSagFrac" }, "Stringing sag", plainMeasure("%", 2, 0.01), { widthPx: 130 }),
  choice({ table, column: "atPoles" }, "At the poles", { clamped: "clamped", slipping: "slipping" }),
  computed("spans", "Spans", plainMeasure("", 0), (plant, id) => plant.where("span", "strandSectionId", id).length, 80),
  computed("length", "Length", runMeasure, (plant, id) =>
    plant.where("span", "strandSectionId", id).reduce((sum, one) => sum + plant.rowOf("span", one).lengthM, 0),
  ),
  computed(
    "breaking",
    "Breaking strength",
    forceMeasure,
    (plant, id) => plant.rowOf("strandType", plant.rowOf(table, id).strandTypeId).breakingN,
    160,
  ),
];

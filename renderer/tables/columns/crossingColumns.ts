import { clearanceLimitFor, crossingClearance } from "../../../core/plant/clearance.ts";
import { spanName } from "../../../core/plant/names.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { surfaceWords } from "../../canvas/crossingMarks.ts";
import { choice, computed, explained, figures, told, words } from "./builders.ts";
import type { CellValue, Column } from "./column.ts";
import { heightMeasure, runMeasure } from "./measures.ts";

const table = "crossing";

const set = (column: string) => (_: Plant, crossingId: string, value: CellValue) => [
  { command: "crossing.set", input: { crossingId, values: { [column]: value } } },
];

export const crossingColumns: readonly Column[] = [
  told("span", "Span", (plant, id) => spanName(plant, plant.rowOf(table, id).spanId), 170),
  words({ table, column: "name" }, "Name", { steps: set("name") }),
  choice({ table, column: "surface" }, "Surface", surfaceWords, { steps: set("surface") }),
  figures({ table, column: "offsetM" }, "From first pole", runMeasure, { steps: set("offsetM"), widthPx: 130 }),
  figures({ table, column: "widthM" }, "Width", runMeasure, { steps: set("widthM") }),
  figures({ table, column: "surfaceM" }, "Elevation", heightMeasure, { steps: set("surfaceM"), mayBeEmpty: true }),
  explained(
    computed(
      "clearance",
      "Least clearance",
      heightMeasure,
      (plant, id) => {
        const clearance = crossingClearance(plant, id);
        return clearance.kind === "known" ? clearance.leastM : null;
      },
      140,
    ),
    (plant, id) => {
      const clearance = crossingClearance(plant, id);
      return { figure: "clearance", id, part: clearance.kind === "known" ? clearance.worstCase : "hot" };
    },
  ),
  computed(
    "limit",
    "Limit",
    heightMeasure,
    (plant, id) => clearanceLimitFor(plant, plant.rowOf(table, id).surface)?.limitM ?? null,
  ),
];

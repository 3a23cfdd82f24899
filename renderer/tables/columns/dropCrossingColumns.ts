import { surfaceWords } from "../../canvas/crossingMarks.ts";
import { choice, figures, reference, words } from "./builders.ts";
import type { Column } from "./column.ts";
import { heightMeasure, runMeasure } from "./measures.ts";

const table = "dropCrossing";

export const dropCrossingColumns: readonly Column[] = [
  reference(
    { table, column: "livingUnitId" },
    "Living unit",
    { table: "livingUnit", column: "address" },
    { widthPx: 200 },
  ),
  words({ table, column: "name" }, "Name"),
  choice({ table, column: "surface" }, "Surface", { ...surfaceWords, roof: "roof" }),
  figures({ table, column: "fromUnitM" }, "From the building", runMeasure, { widthPx: 140 }),
  figures({ table, column: "widthM" }, "Width", runMeasure),
  figures({ table, column: "surfaceM" }, "Elevation", heightMeasure, { mayBeEmpty: true }),
];

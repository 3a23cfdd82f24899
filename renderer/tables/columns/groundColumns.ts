import { figures } from "./builders.ts";
import type { Column } from "./column.ts";
import { heightMeasure, runMeasure } from "./measures.ts";
import { spanOf } from "./spanOf.ts";

const table = "groundPoint";

export const groundColumns: readonly Column[] = [
  spanOf(table),
  figures({ table, column: "offsetM" }, "From first pole", runMeasure, { widthPx: 130 }),
  figures({ table, column: "groundM" }, "Elevation", heightMeasure),
];

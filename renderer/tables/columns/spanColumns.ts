import { cablesInSpan } from "../../../core/plant/cablePath.ts";
import { spanName } from "../../../core/plant/names.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { spanSag } from "../../../core/plant/spanSag.ts";
import { byCommand, computed, explained, figures, told, words } from "./builders.ts";
import type { CellValue, Column } from "./column.ts";
import { forceMeasure, plainMeasure, runMeasure, shortMeasure } from "./measures.ts";

const table = "span";

export const spanColumns: readonly Column[] = [
  told("name", "Span", spanName, 170),
  figures({ table, column: "lengthM" }, "Length", runMeasure, {
    steps: byCommand("span.measure", (_, spanId, lengthM) => ({ spanId, lengthM })),
    warn: outOfUsualLength,
  }),
  told("section", "Strand", (plant, id) => {
    const { strandSectionId } = plant.rowOf(table, id);
    return strandSectionId === null ? "" : plant.rowOf("strandSection", strandSectionId).name;
  }),
  told("cables", "Cables", (plant, id) =>
    cablesInSpan(plant, id)
      .map((one) => plant.rowOf("cable", one).name)
      .join(", "),
  ),
  explained(
    computed("sag", "Sag as strung", shortMeasure, (plant, id) => {
      const sag = spanSag(plant, id);
      return sag.kind === "known" ? sag.stringing.sagM : null;
    }),
    (_, id) => ({ figure: "sag", id, part: "stringing" }),
  ),
  explained(
    computed(
      "tension",
      "Tension loaded",
      forceMeasure,
      (plant, id) => {
        const sag = spanSag(plant, id);
        return sag.kind === "known" ? sag.tension.supportN : null;
      },
      130,
    ),
    (_, id) => ({ figure: "supportTension", id, part: "loaded" }),
  ),
  computed("crossings", "Crossings", plainMeasure("", 0), (plant, id) => plant.where("crossing", "spanId", id).length),
  told("origin", "Found", (plant, id) => plant.rowOf(table, id).origin, 100),
  words({ table, column: "note" }, "Note", { widthPx: 220 }),
];

function outOfUsualLength(plant: Plant, _: string, value: CellValue): string | null {
  const { minSpanM, maxSpanM } = plant.settings();
  if (typeof value !== "number" || (value >= minSpanM && value <= maxSpanM)) return null;
  return "Outside the span lengths of the settings; taken all the same.";
}

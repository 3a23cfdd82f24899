import { guyTensionN } from "../../../core/plant/poleGuys.ts";
import { computed, explained, figures, reference, words } from "./builders.ts";
import type { Column } from "./column.ts";
import { forceMeasure, heightMeasure, plainMeasure, runMeasure } from "./measures.ts";

const table = "guy";

export const guyColumns: readonly Column[] = [
  reference({ table, column: "poleId" }, "Pole", { table: "pole", column: "tag" }, { widthPx: 110 }),
  reference({ table, column: "strandTypeId" }, "Strand", { table: "strandType", column: "name" }),
  figures({ table, column: "heightM" }, "Height", heightMeasure),
  figures({ table, column: "leadM" }, "Lead", runMeasure),
  figures({ table, column: "directionRad" }, "Direction, from east", plainMeasure("°", 0, Math.PI / 180), {
    widthPx: 150,
  }),
  explained(computed("pull", "Pull, loaded", forceMeasure, guyTensionN, 120), (_, id) => ({
    figure: "guyTension",
    id,
  })),
  figures({ table, column: "anchorN" }, "Anchor holds", forceMeasure, { mayBeEmpty: true, widthPx: 120 }),
  words({ table, column: "note" }, "Note", { widthPx: 220 }),
];

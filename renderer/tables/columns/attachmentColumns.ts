import { poleSeparation } from "../../../core/plant/separation.ts";
import { attachmentWords } from "../../panels/words.ts";
import { byCommand, choice, computed, explained, figures, reference, words, yesNo } from "./builders.ts";
import type { Column } from "./column.ts";
import { heightMeasure, plainMeasure } from "./measures.ts";

const table = "attachment";

export const attachmentColumns: readonly Column[] = [
  reference({ table, column: "poleId" }, "Pole", { table: "pole", column: "tag" }, { widthPx: 110 }),
  choice({ table, column: "kind" }, "What", attachmentWords),
  words({ table, column: "owner" }, "Owner"),
  figures({ table, column: "heightM" }, "Height", heightMeasure, {
    steps: byCommand("attachment.set", (_, attachmentId, heightM) => ({ attachmentId, heightM })),
  }),
  explained(
    computed("above", "Above our strand", heightMeasure, (plant, id) => poleSeparation(plant, id)?.aboveM ?? null, 150),
    (plant, id) => (poleSeparation(plant, id) ? { figure: "poleSeparation", id } : null),
  ),
  figures({ table, column: "voltageV" }, "Voltage", plainMeasure("V", 0)),
  yesNo({ table, column: "bonded" }, "Grounded and bonded", { widthPx: 150 }),
  words({ table, column: "note" }, "Note", { widthPx: 220 }),
];

import { governingOfGuy } from "../../../core/plant/guyStrength.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { caseWords } from "../../../core/sheets/tradeWords.ts";
import { computed, explained, figures, reference, told, words } from "./builders.ts";
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
  explained(computed("pull", "Pull with load factors", forceMeasure, pullN, 160), (_, id) => ({
    figure: "guyTension",
    id,
  })),
  computed("used", "Of what it may be pulled", plainMeasure("%", 1, 0.01), usedFrac, 170),
  told("case", "Governing case", (plant, id) => caseWords[governingOfGuy(plant, id).condition]),
  figures({ table, column: "anchorN" }, "Anchor holds", forceMeasure, { mayBeEmpty: true, widthPx: 120 }),
  words({ table, column: "note" }, "Note", { widthPx: 220 }),
];

function pullN(plant: Plant, id: string): number | null {
  return governingOfGuy(plant, id).tensionN;
}

function usedFrac(plant: Plant, id: string): number | null {
  const { tensionN, weakest } = governingOfGuy(plant, id);
  return tensionN === null || !weakest ? null : tensionN / weakest.mostN;
}

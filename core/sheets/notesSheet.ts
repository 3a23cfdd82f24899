import type { Plant } from "../plant/plant.ts";
import type { Draft } from "./book.ts";
import type { Paper } from "./paper/paper.ts";
import { tableDrafts } from "./schedule/tableSheets.ts";

const leastMm = 150;

/** The company's own general notes, one a line of its standards, numbered; none where it has none. */
export function notesDrafts(plant: Plant, { drawing }: Paper): readonly Draft[] {
  const notes = plant
    .settings()
    .generalNotes.split("\n")
    .map((one) => one.trim())
    .filter((one) => one !== "");
  return tableDrafts({
    kind: "notes",
    title: "General notes",
    columns: [
      { heading: "No.", share: 8, align: "right" },
      { heading: "Note", share: 142, wraps: true },
    ],
    rows: notes.map((note, index) => ({ cells: [String(index + 1), note] })),
    box: drawing,
    leastMm,
  });
}

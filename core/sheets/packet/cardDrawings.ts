import type { Plant } from "../../plant/plant.ts";
import type { Book } from "../book.ts";
import { terminalDrafts } from "../jobCard/terminalSheet.ts";
import { type Paper, type PaperBox, paperOf, uprightPages } from "../paper/paper.ts";
import { writeSvg } from "../paper/writeSvg.ts";

const marginMm = 6;
/** No other sheet is beside a card in a packet. */
const noBook: Book = { numberOf: () => undefined, sheets: [], openFindings: [] };

/** The job card of a terminal on upright pages, as SVG. */
export function cardDrawings(plant: Plant, terminalId: string): readonly string[] {
  const { name, unitSystem } = { name: plant.rowOf("terminal", terminalId).name, ...plant.settings() };
  const sizeMm = uprightPages[unitSystem];
  const drawing: PaperBox = {
    left: marginMm,
    bottom: marginMm,
    right: sizeMm.width - marginMm,
    top: sizeMm.height - marginMm,
  };
  const paper: Paper = { ...paperOf(unitSystem === "us" ? "ANSI A" : "A4"), sizeMm, border: drawing, drawing };
  return terminalDrafts(plant, paper, [terminalId]).map((draft, index) =>
    writeSvg({
      number: String(index + 1),
      title: `${name}, ${index + 1}`,
      kind: draft.kind,
      sizeMm,
      marks: draft.draw(noBook).marks,
      keys: [],
      scale: draft.scale,
      links: [],
    }),
  );
}

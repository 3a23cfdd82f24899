import type { Mark } from "../paper/displayList.ts";
import { type Block, flow } from "../paper/flow.ts";
import { columnBoxes, columnsAbreast, type PaperBox } from "../paper/paper.ts";

/** Narrowest column a card's panels are drawn in, and the least room two columns of a whole card take, mm. */
const columnMm = 180;
const cardMm = { width: 369, height: 205 } as const;
const gutterMm = 9;

/** Places for cards on a drawing space: one, or as many as large paper takes side by side and one under the other. */
export function cardBoxes(drawing: PaperBox): readonly PaperBox[] {
  const across = columnsAbreast(drawing, cardMm.width, 2 * gutterMm);
  const down = Math.max(1, Math.floor((drawing.top - drawing.bottom + 2 * gutterMm) / (cardMm.height + 2 * gutterMm)));
  const height = (drawing.top - drawing.bottom - 2 * gutterMm * (down - 1)) / down;
  return Array.from({ length: down }, (_, row) => {
    const top = drawing.top - row * (height + 2 * gutterMm);
    return columnBoxes({ ...drawing, top, bottom: top - height }, across, 2 * gutterMm);
  }).flat();
}

/** A column that a card's panels stand in. */
export function cardColumn(box: PaperBox): PaperBox {
  return columnsOf(box)[0] ?? box;
}

/** What stands on one page of a card, column by column. */
export type CardPage = readonly (readonly Block[])[];

/** A card's panels on as many pages as they need: each group starts in a column of its own where the box has two. */
export function cardPages(groups: readonly (readonly Block[])[], box: PaperBox): readonly CardPage[] {
  const columns = columnsOf(box);
  const column = cardColumn(box);
  if (columns.length === 1) return columnLoads(groups.flat(), column).map((one) => [one]);
  const filled = groups.map((blocks) => columnLoads(blocks, column));
  const over = filled.flatMap((loads) => loads.slice(1));
  const pages: CardPage[] = [filled.flatMap((loads) => loads.slice(0, 1))];
  for (let at = 0; at < over.length; at += columns.length) pages.push(over.slice(at, at + columns.length));
  return pages;
}

/** Draws a page of a card. */
export function drawCardPage(page: CardPage, box: PaperBox): readonly Mark[] {
  const columns = columnsOf(box);
  return page.flatMap((blocks, index) => flow(blocks, columns[index] ?? box).flat());
}

function columnsOf(box: PaperBox): readonly PaperBox[] {
  return columnBoxes(box, Math.min(2, columnsAbreast(box, columnMm, gutterMm)), gutterMm);
}

/** Blocks dealt to columns of one height. */
function columnLoads(blocks: readonly Block[], { top, bottom }: PaperBox): readonly (readonly Block[])[] {
  const loads: Block[][] = [[]];
  let leftMm = top - bottom;
  for (const block of blocks) {
    if (block.heightMm > leftMm && (loads.at(-1)?.length ?? 0) > 0) {
      loads.push([]);
      leftMm = top - bottom;
    }
    loads.at(-1)?.push(block);
    leftMm -= block.heightMm;
  }
  return loads;
}

import { type Mark, type PaperPoint, pensMm, type Sheet, type TextMark } from "./displayList.ts";
import { textBox } from "./measureText.ts";
import { openOccupied } from "./occupied.ts";
import { cornersOf } from "./orientedBox.ts";
import type { PaperBox } from "./paper.ts";

/** Two texts of a sheet that lie over each other. */
type Overlap = { readonly sheet: string; readonly first: TextMark; readonly second: TextMark };

/** Every pair of texts that share paper, measured from the fonts' own widths; none on a sheet fit to print. */
export function overlaps(sheet: Sheet): readonly Overlap[] {
  const found: Overlap[] = [];
  const occupied = openOccupied<TextMark>();
  for (const mark of sheet.marks) {
    // a watermark lies under the ink and is meant to be written over
    if (mark.kind !== "text" || mark.layer === "watermark" || mark.text.trim() === "") continue;
    const outline = cornersOf(textBox(mark));
    for (const first of occupied.touching(outline)) found.push({ sheet: sheet.number, first, second: mark });
    occupied.add(outline, mark);
  }
  return found;
}

/** Texts that stick out of the paper. */
export function outsidePaper(sheet: Sheet): readonly TextMark[] {
  const { width, height } = sheet.sizeMm;
  return sheet.marks
    .filter((mark) => mark.kind === "text")
    .filter((mark) => cornersOf(textBox(mark)).some(([x, y]) => x < 0 || y < 0 || x > width || y > height));
}

/** Marks that reach over a border, lines by half their pen at most. */
export function outsideBorder(sheet: Sheet, border: PaperBox): readonly Mark[] {
  const { left, bottom, right, top } = border;
  const slackMm = pensMm.thick / 2;
  return sheet.marks.filter((mark) =>
    extentOf(mark).some(
      ([x, y]) => x < left - slackMm || y < bottom - slackMm || x > right + slackMm || y > top + slackMm,
    ),
  );
}

function extentOf(mark: Mark): readonly PaperPoint[] {
  switch (mark.kind) {
    case "text":
      return cornersOf(textBox(mark));
    case "line":
      return mark.pointsMm;
    case "image": {
      const [x, y, width, height] = mark.boxMm;
      return [
        [x, y],
        [x + width, y + height],
      ];
    }
    case "arc": {
      const { centreMm, radiusMm } = mark;
      return cornersOf({ centre: centreMm, width: 2 * radiusMm, height: 2 * radiusMm, turnRad: 0 });
    }
  }
}

import type { Sheet, TextMark } from "./displayList.ts";
import { textBox } from "./measureText.ts";
import { openOccupied } from "./occupied.ts";
import { cornersOf } from "./orientedBox.ts";

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

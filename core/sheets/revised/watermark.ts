import type { Mark } from "../paper/displayList.ts";
import { words } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import { type Paper, titleBandMm } from "../paper/paper.ts";

/** Grey that a copier's black and white still shows as a screen of dots, and that black lettering reads well over. */
const grey = 0.91;
const turnRad = Math.PI / 7;
/** Height of a capital and length of a line, of the width inside the border. */
const largestFrac = 0.06;
const longestFrac = 0.74;

/** Words across a sheet, under everything else: one line each, rising to the right. */
export function watermark(texts: readonly string[], { border }: Paper): readonly Mark[] {
  const width = border.right - border.left;
  const middle = [(border.left + border.right) / 2, (border.bottom + titleBandMm + border.top) / 2] as const;
  const largest = width * largestFrac;
  const sizes = texts.map((text) => (largest * width * longestFrac) / textWidthMm(text, "plainBold", largest));
  const heightMm = Math.min(largest, ...sizes);
  return texts.map((text, index) => {
    const down = (index - (texts.length - 1) / 2) * heightMm * 1.6 + heightMm / 2;
    return words(text, [middle[0] + down * Math.sin(turnRad), middle[1] - down * Math.cos(turnRad)], {
      layer: "watermark",
      face: "plainBold",
      heightMm,
      align: "middle",
      turnRad,
      grey,
    });
  });
}

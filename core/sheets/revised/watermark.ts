import type { Mark } from "../displayList.ts";
import { words } from "../marks.ts";
import { textWidthMm } from "../measureText.ts";
import { type Paper, titleBandMm } from "../paper.ts";

/** Grey that a copier's black and white still shows as a screen of dots, and that black lettering reads well over. */
const grey = 0.91;
const turnRad = Math.PI / 7;
const largestMm = 24;
/** Of the border's width, at most. */
const longestShare = 0.72;

/** Words across a sheet, under everything else: one line each, rising to the right. */
export function watermark(texts: readonly string[], { border }: Paper): readonly Mark[] {
  const middle = [(border.left + border.right) / 2, (border.bottom + titleBandMm + border.top) / 2] as const;
  const longestMm = longestShare * (border.right - border.left);
  const sizes = texts.map((text) =>
    Math.min(largestMm, (largestMm * longestMm) / textWidthMm(text, "plainBold", largestMm)),
  );
  const heightMm = Math.min(largestMm, ...sizes);
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

import { lettering } from "../canvas/ink.ts";
import type { Pen } from "../canvas/paint.ts";
import type { ProfileLook } from "./profileScene.ts";

/** A line of a label, and whether it is its figure. */
export type LabelText = { readonly text: string; readonly isBold: boolean };

/** Size of letters in labels, px at the usual size. */
const letterPx = 11;

/** Height of a line of a label, px at the usual size of letters. */
export const labelLinePx = 13;

/** Lines of a label that wait for a place: how much room they take, and what writes them with their upper left corner there. */
export function writeLines(pen: Pen, { ink }: ProfileLook, lines: readonly LabelText[]) {
  const [linePx, fontPx] = [labelLinePx * ink.letterFrac, letterPx * ink.letterFrac];
  const widths = lines.map(({ text, isBold }) => {
    pen.font = lettering(fontPx, isBold ? 600 : 400);
    return pen.measureText(text).width;
  });
  const [widthPx, heightPx] = [Math.max(0, ...widths), lines.length * linePx];
  return {
    widthPx,
    heightPx,
    at(leftX: number, topY: number): void {
      pen.fillStyle = ink.ground;
      pen.fillRect(leftX - 2, topY, widthPx + 4, heightPx);
      pen.textAlign = "left";
      pen.textBaseline = "middle";
      for (const [index, { text, isBold }] of lines.entries()) {
        pen.font = lettering(fontPx, isBold ? 600 : 400);
        pen.fillStyle = isBold ? ink.ink : ink.soft;
        pen.fillText(text, leftX, topY + (index + 0.5) * linePx);
      }
    },
  };
}

import type { TextMark } from "../../core/sheets/paper/displayList.ts";
import { type FontFace, textRuns } from "../../core/sheets/paper/measureText.ts";
import type { Piece } from "./pdfNest.ts";
import { hundredths, points, rounded } from "./pdfNumbers.ts";
import type { LowFont } from "./writePdfObjects.ts";

/** Writes the texts of a page; what stays the same from one to the next is said once. */
export type TextWriter = {
  /** Operators that show a text inside a text object, the first of such an object or a later one. */
  readonly show: (mark: TextMark, isFirst: boolean) => string;
};

/** A text object. */
export const textPiece: Piece = { begin: "BT", end: "ET" };

/** @param fontOf  the font to draw a run of text with */
export function openTexts(fontOf: (face: FontFace) => LowFont): TextWriter {
  let [ink, font] = ["", ""];
  let place: readonly [number, number] | null = [0, 0];
  const told = (before: string, now: string): string => (before === now ? "" : `${now} `);
  const moved = (turned: string | null, [x, y]: readonly [number, number]): string => {
    const from = place;
    place = turned === null ? [x, y] : null; // steps along a turned line would add up what rounding takes
    return turned === null && from !== null
      ? `${(x - from[0]) / 100} ${(y - from[1]) / 100} Td`
      : `${turned ?? "1 0 0 1"} ${x / 100} ${y / 100} Tm`;
  };
  return {
    show(mark, isFirst) {
      if (isFirst) place = [0, 0];
      const inked = `${rounded(mark.grey)} g`;
      const { turned, runs } = runsOf(mark);
      const shown = runs.map(({ run, at }) => {
        const face = fontOf(run.font);
        const lettered = `/${face.name} ${points(run.sizeMm)} Tf`;
        const text = `${told(font, lettered)}${moved(turned, at)} ${face.literal(run.text)} Tj`;
        font = lettered;
        return text;
      });
      const written = `${told(ink, inked)}${shown.join(" ")}`;
      ink = inked;
      return written;
    },
  };
}

/** The runs of a text and where each begins, in hundredths of a point; how the text is turned, null where it is not. */
function runsOf({ text, face, heightMm, atMm, align, turnRad }: TextMark) {
  const runs = textRuns(text, face, heightMm);
  const width = runs.reduce((sum, run) => sum + run.widthMm, 0);
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  let along = align === "left" ? 0 : align === "middle" ? -width / 2 : -width;
  const turned = turnRad === 0 ? null : [cos, sin, -sin, cos].map((one) => Number(one.toFixed(5))).join(" ");
  const placed = runs.map((run) => {
    const at = [hundredths(atMm[0] + along * cos), hundredths(atMm[1] + along * sin)] as const;
    along += run.widthMm;
    return { run, at };
  });
  return { turned, runs: placed };
}

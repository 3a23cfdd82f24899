import { layers, type Mark, type PaperPoint, pensMm, type Sheet, type TextMark } from "./displayList.ts";
import { textBox } from "./measureText.ts";
import { openOccupied } from "./occupied.ts";
import { boundsOf, cornersOf } from "./orientedBox.ts";
import type { PaperBox } from "./paper.ts";

/** Two texts of a sheet that lie over each other. */
type Overlap = { readonly sheet: string; readonly first: TextMark; readonly second: TextMark };

/** A text with a line through it. */
type Struck = { readonly sheet: string; readonly text: string; readonly line: readonly PaperPoint[] };

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

/** What a line may touch of a text without running through it, mm. */
const grazeMm = 0.15;

/**
 * Lines that run through words: painted over them, or under them with no white between. Redlines are meant to; they stand on the layer of
 * the words themselves.
 */
export function struckTexts(sheet: Sheet): readonly Struck[] {
  const painted = layers.flatMap((layer) =>
    sheet.marks.filter((mark) => mark.layer === layer && layer !== "watermark"),
  );
  const lines = openOccupied<{ readonly at: number; readonly piece: readonly PaperPoint[] }>();
  const whites = openOccupied<{ readonly at: number; readonly outline: readonly PaperPoint[] }>();
  painted.forEach((mark, at) => {
    if (mark.kind !== "line") return;
    if (mark.closed && mark.fill === 1) whites.add(mark.pointsMm, { at, outline: mark.pointsMm });
    if (mark.pen === null || mark.layer === "text") return;
    const ring = mark.closed ? [...mark.pointsMm, ...mark.pointsMm.slice(0, 1)] : mark.pointsMm;
    ring.slice(1).forEach((to, index) => {
      const piece = [ring[index] ?? to, to];
      lines.add(piece, { at, piece });
    });
  });
  return painted.flatMap((mark, at): readonly Struck[] => {
    if (mark.kind !== "text" || mark.text.trim() === "") return [];
    const { width, height, ...place } = textBox(mark);
    const core = cornersOf({
      ...place,
      width: width - 2 * grazeMm,
      height: Math.min(height, mark.heightMm) - 2 * grazeMm,
    });
    const isCovered = (line: number) =>
      whites.touching(core).some((white) => white.at > line && white.at < at && holds(white.outline, core));
    const through = lines.touching(core).find((line) => line.at > at || !isCovered(line.at));
    return through ? [{ sheet: sheet.number, text: mark.text, line: through.piece }] : [];
  });
}

/** True where one outline's bounds hold another's. */
function holds(outer: readonly PaperPoint[], inner: readonly PaperPoint[]): boolean {
  const [left, bottom, right, top] = boundsOf(outer);
  return inner.every(([x, y]) => x >= left && x <= right && y >= bottom && y <= top);
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

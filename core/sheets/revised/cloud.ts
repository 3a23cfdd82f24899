import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { area, words } from "../paper/marks.ts";
import type { PaperBox } from "../paper/paper.ts";

const chordMm = 4.4;
/** Each bow is this much of a circle. */
const bowRad = (Math.PI * 13) / 18;
/** How far the bows reach beyond their box, mm. */
export const bulgeMm = (chordMm / 2) * Math.tan(bowRad / 4);

/** A cloud round a box of paper: bows along its four sides. */
export function cloud({ left, bottom, right, top }: PaperBox): readonly Mark[] {
  const corners: readonly PaperPoint[] = [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ];
  return corners.flatMap((from, index) => side(from, corners[(index + 1) % corners.length] ?? from));
}

function side(from: PaperPoint, to: PaperPoint): readonly Mark[] {
  const lengthMm = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const count = Math.max(1, Math.round(lengthMm / chordMm));
  const alongRad = Math.atan2(to[1] - from[1], to[0] - from[0]);
  const radiusMm = lengthMm / count / 2 / Math.sin(bowRad / 2);
  const inMm = radiusMm * Math.cos(bowRad / 2);
  return Array.from({ length: count }, (_, index): Mark => {
    const frac = (index + 0.5) / count;
    const middle: PaperPoint = [from[0] + (to[0] - from[0]) * frac, from[1] + (to[1] - from[1]) * frac];
    const centreMm: PaperPoint = [middle[0] - inMm * Math.sin(alongRad), middle[1] + inMm * Math.cos(alongRad)];
    const startRad = alongRad - Math.PI / 2 - bowRad / 2;
    return {
      kind: "arc",
      layer: "revisions",
      centreMm,
      radiusMm,
      startRad,
      endRad: startRad + bowRad,
      pen: "medium",
      fill: null,
    };
  });
}

export const triangleMm = { width: 6.4, height: 5.6 } as const;

/** The triangle that tells which revision a cloud belongs to, by the middle of its box. */
export function revisionTriangle([x, y]: PaperPoint, letter: string): readonly Mark[] {
  const { width, height } = triangleMm;
  const outline: readonly PaperPoint[] = [
    [x - width / 2, y - height / 2],
    [x + width / 2, y - height / 2],
    [x, y + height / 2],
  ];
  return [
    area("revisions", "bold", outline, { fill: 1 }),
    words(letter, [x, y - height / 2 + 0.75], { layer: "revisions", face: "narrowBold", heightMm: 2, align: "middle" }),
  ];
}

import type { Face, Mark, PaperPoint } from "./displayList.ts";
import { area, stroke, words } from "./marks.ts";
import { textExtentMm, textWidthMm } from "./measureText.ts";
import { cornersOf, type OrientedBox } from "./orientedBox.ts";
import type { Candidate, Placer } from "./placer.ts";

/** Lines of one label, top first. */
export type LabelLine = {
  readonly text: string;
  readonly face: Face;
  readonly heightMm: number;
  /** Struck through: designed, and built otherwise. */
  readonly isStruck?: boolean;
};

const leadingFrac = 1.55;
const maskMm = 0.35;
const strikeOverMm = 0.5;

/** Width and height of a label with its lines one under the other, mm. */
export function labelSizeMm(lines: readonly LabelLine[]): { readonly width: number; readonly height: number } {
  const width = Math.max(0, ...lines.map((line) => textWidthMm(line.text, line.face, line.heightMm)));
  const first = lines[0];
  const last = lines.at(-1);
  if (!(first && last)) return { width, height: 0 };
  const steps = lines.slice(1).reduce((sum, line) => sum + line.heightMm * leadingFrac, 0);
  const ends =
    textExtentMm(first.text, first.face, first.heightMm).upMm +
    textExtentMm(last.text, last.face, last.heightMm).downMm;
  return { width, height: steps + ends };
}

/**
 * Puts a label where it is free and draws it: white under it so that lines do not run through the words, and a leader where it had
 * to move away.
 *
 * @returns the marks; null where the sheet has no room left
 */
export function drawLabel(
  placer: Placer,
  lines: readonly LabelLine[],
  anchor: PaperPoint,
  candidates: readonly Candidate[],
  far: readonly Candidate[] = [],
): readonly Mark[] | null {
  const size = labelSizeMm(lines);
  const placed = placer.place({ ...size, anchor, candidates, far });
  if (!placed) return null;
  const leader = placed.leader ? [stroke("dimensions", "fine", placed.leader)] : [];
  return [...leader, ...labelMarks(lines, placed.box)];
}

/** A label's lines centred in its box, with white under them. */
export function labelMarks(lines: readonly LabelLine[], box: OrientedBox): readonly Mark[] {
  const mask = cornersOf({ ...box, width: box.width + 2 * maskMm, height: box.height + 2 * maskMm });
  const marks: Mark[] = [area("text", null, mask, { fill: 1 })];
  const first = lines[0];
  if (!first) return [];
  let down = textExtentMm(first.text, first.face, first.heightMm).upMm - box.height / 2;
  lines.forEach((line, index) => {
    if (index > 0) down += line.heightMm * leadingFrac;
    const at: PaperPoint = [box.centre[0] + down * Math.sin(box.turnRad), box.centre[1] - down * Math.cos(box.turnRad)];
    marks.push(
      words(line.text, at, { face: line.face, heightMm: line.heightMm, align: "middle", turnRad: box.turnRad }),
    );
    if (line.isStruck) marks.push(strike(line, at, box.turnRad));
  });
  return marks;
}

/** A line through words that stand centred on a point. */
export function strike({ text, face, heightMm }: LabelLine, [x, y]: PaperPoint, turnRad: number): Mark {
  const half = textWidthMm(text, face, heightMm) / 2 + strikeOverMm;
  const middle: PaperPoint = [x - (heightMm / 2) * Math.sin(turnRad), y + (heightMm / 2) * Math.cos(turnRad)];
  const [along, up] = [half * Math.cos(turnRad), half * Math.sin(turnRad)];
  return stroke("text", "medium", [
    [middle[0] - along, middle[1] - up],
    [middle[0] + along, middle[1] + up],
  ]);
}

/** Places round a point: right, left, above, below and the corners, in rings farther and farther out. */
export function roundCandidates(
  [x, y]: PaperPoint,
  width: number,
  height: number,
  clearMm: number,
): readonly Candidate[] {
  return [0, 2, 4.5].flatMap((outMm, ring) => {
    const dx = width / 2 + clearMm + outMm;
    const dy = height / 2 + clearMm + outMm;
    const spots = [
      [0, dy],
      [0, -dy],
      [dx, 0],
      [-dx, 0],
      [dx * 0.75, dy],
      [-dx * 0.75, dy],
      [dx * 0.75, -dy],
      [-dx * 0.75, -dy],
    ] as const;
    return spots.map(
      ([ox, oy], rank): Candidate => ({ centre: [x + ox, y + oy], turnRad: 0, cost: ring * 3 + rank * 0.3 }),
    );
  });
}

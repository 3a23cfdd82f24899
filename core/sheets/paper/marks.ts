import type { Align, ArcMark, Face, Fill, Layer, LineMark, Mark, PaperPoint, Pen, TextMark } from "./displayList.ts";
import type { Part } from "./part.ts";

type LineStyle = { readonly dashMm?: readonly number[]; readonly fill?: Fill };

/** An open line through points. */
export function stroke(layer: Layer, pen: Pen, pointsMm: readonly PaperPoint[], style: LineStyle = {}): LineMark {
  return { kind: "line", layer, pointsMm, pen, dashMm: style.dashMm ?? [], closed: false, fill: null };
}

/** A closed outline; no pen leaves only its fill. */
export function area(layer: Layer, pen: Pen | null, pointsMm: readonly PaperPoint[], style: LineStyle = {}): LineMark {
  return { kind: "line", layer, pointsMm, pen, dashMm: style.dashMm ?? [], closed: true, fill: style.fill ?? null };
}

/** An upright rectangle by its lower left corner. */
export function rectangle(
  layer: Layer,
  pen: Pen | null,
  [x, y]: PaperPoint,
  width: number,
  height: number,
  style: LineStyle = {},
): LineMark {
  const corners = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ] as const;
  return area(layer, pen, corners, style);
}

/** A whole circle. */
export function circle(
  layer: Layer,
  pen: Pen | null,
  centreMm: PaperPoint,
  radiusMm: number,
  fill: Fill = null,
): ArcMark {
  return { kind: "arc", layer, centreMm, radiusMm, startRad: 0, endRad: 2 * Math.PI, pen, fill };
}

export type Lettering = {
  readonly face?: Face;
  readonly heightMm?: number;
  readonly align?: Align;
  readonly turnRad?: number;
  readonly grey?: number;
  readonly layer?: Layer;
  readonly part?: Part;
};

/** Height of a capital in notes and tables, mm. Nothing is printed under 2 mm. */
export const bodyMm = 2.2;
export const smallMm = 2;

/** A line of text on its base line; plain body text unless told otherwise. */
export function words(text: string, atMm: PaperPoint, lettering: Lettering = {}): TextMark {
  return {
    kind: "text",
    layer: lettering.layer ?? "text",
    text,
    atMm,
    heightMm: lettering.heightMm ?? bodyMm,
    face: lettering.face ?? "plain",
    align: lettering.align ?? "left",
    turnRad: lettering.turnRad ?? 0,
    grey: lettering.grey ?? 0,
    ...(lettering.part ? { part: lettering.part } : {}),
  };
}

/** Lines of text that are told as one paragraph. */
export function asParagraph(lines: readonly TextMark[]): readonly TextMark[] {
  const part: Part = { as: "paragraph" };
  return lines.map((line) => ({ ...line, part }));
}

/** Marks that are told together as a drawing, in these words; tables among them stay tables. */
export function asFigure(told: string, marks: readonly Mark[]): readonly Mark[] {
  const part: Part = { as: "figure", words: told };
  return marks.map((mark) => (mark.part ? mark : { ...mark, part }));
}

/** The corners of a rectangle with its corners rounded, counter-clockwise; each corner in steps of a sixth of a right angle. */
export function roundedOutline(
  [x, y]: PaperPoint,
  width: number,
  height: number,
  radius: number,
): readonly PaperPoint[] {
  const centres = [
    [x + width - radius, y + radius, -Math.PI / 2],
    [x + width - radius, y + height - radius, 0],
    [x + radius, y + height - radius, Math.PI / 2],
    [x + radius, y + radius, Math.PI],
  ] as const;
  return centres.flatMap(([cx, cy, start]) =>
    Array.from({ length: 7 }, (_, step): PaperPoint => {
      const turn = start + (step * Math.PI) / 12;
      return [cx + radius * Math.cos(turn), cy + radius * Math.sin(turn)];
    }),
  );
}

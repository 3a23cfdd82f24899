import {
  type ArcMark,
  type Fill,
  type ImageMark,
  type LineMark,
  type Mark,
  pensMm,
  type TextMark,
} from "../sheets/paper/displayList.ts";
import { shortenText } from "../sheets/paper/fitText.ts";
import { rectangle, smallMm, words } from "../sheets/paper/marks.ts";
import { textWidthMm } from "../sheets/paper/measureText.ts";
import type { DxfEntity, DxfPoint } from "./drawing.ts";

type MarkOptions = {
  readonly layerOf: (mark: Mark) => string;
  /** Drawing units for a millimetre of paper. */
  readonly unitsPerMm: number;
  /** Where the paper's lower left corner lies. */
  readonly origin?: DxfPoint;
  /**
   * True gives lines their pens' widths, as on a sheet. False, for symbols, leaves those to the plotter and draws outlines piece by
   * piece: inside a block, a reader may take a polyline apart wrongly.
   */
  readonly asPrinted: boolean;
};

/**
 * Marks of a display list as entities. White areas hide nothing in R12 and are left out; an area of five corners or more keeps its
 * outline and loses its shade.
 */
export function dxfMarks(marks: readonly Mark[], options: MarkOptions): readonly DxfEntity[] {
  const { unitsPerMm, origin = [0, 0] } = options;
  const place = ([x, y]: DxfPoint): DxfPoint => [origin[0] + x * unitsPerMm, origin[1] + y * unitsPerMm];
  const frame: Frame = { ...options, place };
  return marks.flatMap((mark) => {
    switch (mark.kind) {
      case "line":
        return lineEntities(mark, frame);
      case "arc":
        return arcEntities(mark, frame);
      case "text":
        return textEntities(mark, frame);
      case "image":
        return imageEntities(mark, frame);
      default:
        return assertNever(mark);
    }
  });
}

/** R12 holds no pictures: its frame, and in it what it shows. */
function imageEntities({ layer, boxMm: [x, y, width, height], told }: ImageMark, frame: Frame): readonly DxfEntity[] {
  const heightMm = Math.min(smallMm, height / 2);
  const fits = shortenText(told, "narrow", heightMm, width - 1);
  const middle = words(fits, [x + width / 2, y + (height - heightMm) / 2], {
    layer,
    face: "narrow",
    heightMm,
    align: "middle",
  });
  return [...lineEntities(rectangle(layer, "fine", [x, y], width, height), frame), ...textEntities(middle, frame)];
}

type Frame = MarkOptions & { readonly place: (point: DxfPoint) => DxfPoint };

function lineEntities(mark: LineMark, frame: Frame): readonly DxfEntity[] {
  const layer = frame.layerOf(mark);
  const points = mark.pointsMm.map(frame.place);
  const colour = colourOf(mark.fill);
  const canFill = mark.closed && points.length >= 3 && points.length <= 4 && colour !== null;
  const drawn = frame.asPrinted ? [{ points, closed: mark.closed }] : pieces(points, mark.closed);
  const style = { kind: "line" as const, layer, dashed: mark.dashMm.length > 0, width: widthOf(mark, frame) };
  return [
    ...(canFill ? [{ kind: "solid" as const, layer, ...colour, corners: points }] : []),
    ...(mark.pen === null ? [] : drawn.map((one) => ({ ...style, ...one }))),
  ];
}

/** An outline as its straight pieces. */
function pieces(points: readonly DxfPoint[], closed: boolean) {
  return points.flatMap((from, index) => {
    const to = points[index + 1] ?? (closed ? points[0] : undefined);
    return to ? [{ points: [from, to], closed: false }] : [];
  });
}

function arcEntities(mark: ArcMark, frame: Frame): readonly DxfEntity[] {
  const layer = frame.layerOf(mark);
  const radius = mark.radiusMm * frame.unitsPerMm;
  const isWhole = mark.endRad - mark.startRad >= 2 * Math.PI - 1e-9;
  const colour = colourOf(mark.fill);
  const disc = { ...mark, radiusMm: mark.radiusMm / 2, startRad: 0, endRad: 2 * Math.PI };
  // a disc is a ring as wide as its radius
  const filled =
    isWhole && colour !== null && frame.asPrinted
      ? [{ ...turning(disc, frame), layer, ...colour, width: radius } satisfies DxfEntity]
      : [];
  if (mark.pen === null) return filled;
  const width = widthOf(mark, frame);
  const outline: DxfEntity =
    isWhole && width === 0
      ? { kind: "circle", layer, centre: frame.place(mark.centreMm), radius }
      : { ...turning(mark, frame), layer, width };
  return [...filled, outline];
}

/** An arc in two halves, each with its bulge. */
function turning({ centreMm, radiusMm, startRad, endRad }: ArcMark, { place }: Frame) {
  const at = (turn: number) =>
    place([centreMm[0] + radiusMm * Math.cos(turn), centreMm[1] + radiusMm * Math.sin(turn)]);
  const bulge = Math.tan((endRad - startRad) / 8);
  const points = [at(startRad), at((startRad + endRad) / 2), at(endRad)];
  return { kind: "line" as const, points, bulges: [bulge, bulge], closed: false, dashed: false };
}

function textEntities(mark: TextMark, frame: Frame): readonly DxfEntity[] {
  if (mark.text.trim() === "") return [];
  const widthMm = textWidthMm(mark.text, mark.face, mark.heightMm);
  const alongMm = mark.align === "left" ? widthMm / 2 : mark.align === "middle" ? 0 : -widthMm / 2;
  const [x, y] = mark.atMm;
  const middle: DxfPoint = [x + alongMm * Math.cos(mark.turnRad), y + alongMm * Math.sin(mark.turnRad)];
  return [
    {
      kind: "text",
      layer: frame.layerOf(mark),
      text: mark.text,
      at: frame.place(middle),
      height: mark.heightMm * frame.unitsPerMm,
      turnRad: mark.turnRad,
      width: widthMm * frame.unitsPerMm,
    },
  ];
}

function widthOf({ pen }: LineMark | ArcMark, { asPrinted, unitsPerMm }: Frame): number {
  return asPrinted && pen !== null ? pensMm[pen] * unitsPerMm : 0;
}

/** Colours of the palette that fills come near to: number, red, green, blue. */
const palette = [
  [1, 1, 0, 0],
  [2, 1, 1, 0],
  [3, 0, 1, 0],
  [4, 0, 1, 1],
  [5, 0, 0, 1],
  [6, 1, 0, 1],
  [8, 0.5, 0.5, 0.5],
  [9, 0.75, 0.75, 0.75],
  [30, 1, 0.5, 0],
  [34, 0.6, 0.3, 0],
  [200, 0.75, 0, 1],
  [221, 1, 0.5, 0.75],
] as const;
const lightest = 0.9;

/** Colour of a fill: black as the layer is, none where it is as good as white, else the nearest of the palette. */
function colourOf(fill: Fill): { readonly colour?: number } | null {
  if (fill === null) return null;
  const [red, green, blue] = typeof fill === "number" ? [fill, fill, fill] : fill;
  if (Math.min(red, green, blue) >= lightest) return null;
  if (Math.max(red, green, blue) < 0.1) return {};
  const off = ([, r, g, b]: (typeof palette)[number]) => (r - red) ** 2 + (g - green) ** 2 + (b - blue) ** 2;
  const [nearest] = palette.reduce((best, one) => (off(one) < off(best) ? one : best));
  return { colour: nearest };
}

function assertNever(mark: never): never {
  throw new Error(`no way to write ${JSON.stringify(mark)}`);
}

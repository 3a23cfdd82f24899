import {
  type ArcMark,
  type Fill,
  type ImageMark,
  type Layer,
  type LineMark,
  layers,
  type Mark,
  marksByLayer,
  type PaperPoint,
  pensMm,
  type Sheet,
} from "../../core/sheets/paper/displayList.ts";
import type { FontFace } from "../../core/sheets/paper/measureText.ts";
import type { PageTags } from "./pdfLeaves.ts";
import { openNest } from "./pdfNest.ts";
import { hundredths, points, rounded } from "./pdfNumbers.ts";
import { openTexts, type TextWriter, textPiece } from "./pdfText.ts";
import { type LowFont, layerName } from "./writePdfObjects.ts";

/** What the page's content names things by. */
export type PageNames = {
  /** The font to draw a run of text with. */
  readonly fontOf: (face: FontFace) => LowFont;
  /** The picture of a data address in the page's resources. */
  readonly imageOf: (href: string) => string;
};

/**
 * A sheet as PDF page content: layer by layer, neighbouring marks of one pen and fill as one path, each piece called by the element
 * that it belongs to. Coordinates are rounded to a hundredth of a point.
 */
export function pdfContent(sheet: Sheet, { fontOf, imageOf }: PageNames, tags: PageTags): string {
  // the library starts a page with y down; this turns it up again
  const upright = `1 0 0 -1 0 ${points(sheet.sizeMm.height)} cm 1 j 1 J`;
  const byLayer = marksByLayer(sheet);
  const desk = { texts: openTexts(fontOf), imageOf, tags };
  return [upright, ...layers.flatMap((layer) => layerContent(layer, byLayer.get(layer) ?? [], desk))].join("\n");
}

type Desk = Pick<PageNames, "imageOf"> & { readonly texts: TextWriter; readonly tags: PageTags };

function layerContent(layer: Layer, marks: readonly Mark[], { texts, imageOf, tags }: Desk): readonly string[] {
  if (marks.length === 0) return [];
  const parts: string[] = [`/OC /${layerName(layer)} BDC`];
  const nest = openNest(parts, tags);
  for (const mark of linesThenTexts(marks)) {
    const leaf = tags.leafOf(mark);
    if (mark.kind === "text") {
      const isFirst = nest.enter(leaf, textPiece);
      parts.push(texts.show(mark, isFirst));
    } else if (mark.kind === "image") {
      nest.enter(leaf, { begin: "q", end: "Q" });
      parts.push(imageContent(mark, imageOf(mark.href)));
    } else {
      const { style, paint } = styleOf(mark);
      nest.enter(leaf, { begin: `q ${style}`, end: "Q" });
      parts.push(mark.kind === "line" ? linePath(mark) : arcPath(mark), paint);
    }
  }
  nest.close();
  parts.push("EMC");
  return parts;
}

/** The lines of a layer and then its texts, each in the order they are drawn: words lie on what is drawn round them. */
function linesThenTexts(marks: readonly Mark[]): readonly Mark[] {
  return [...marks.filter((one) => one.kind !== "text"), ...marks.filter((one) => one.kind === "text")];
}

/** How a mark is drawn: what sets pen, dash and ink, and what then paints its path. */
function styleOf(mark: LineMark | ArcMark): { readonly style: string; readonly paint: string } {
  const pen = mark.pen === null ? "" : `${points(pensMm[mark.pen])} w`;
  const dash = mark.kind === "line" && mark.dashMm.length > 0 ? `[${mark.dashMm.map(points).join(" ")}] 0 d` : "";
  const paint = mark.fill === null ? "S" : mark.pen === null ? "f" : "B";
  return { style: [pen, dash, inkOf(mark.fill)].filter((one) => one !== "").join(" "), paint };
}

function inkOf(fill: Fill): string {
  if (fill === null) return "";
  return typeof fill === "number" ? `${rounded(fill)} g` : `${fill.map(rounded).join(" ")} rg`;
}

function imageContent({ boxMm: [x, y, width, height] }: ImageMark, name: string): string {
  return `q ${points(width)} 0 0 ${points(height)} ${points(x)} ${points(y)} cm /${name} Do Q`;
}

function linePath(mark: LineMark): string {
  const upright = mark.closed ? uprightBox(mark.pointsMm) : null;
  if (upright) return `${upright.map((one) => String(one / 100)).join(" ")} re`;
  const steps = mark.pointsMm.map(([x, y], index) => `${points(x)} ${points(y)} ${index === 0 ? "m" : "l"}`);
  return steps.join(" ") + (mark.closed ? " h" : "");
}

/** Corner, width and height of an outline that is an upright rectangle from its lower left corner, in hundredths of a point. */
function uprightBox(pointsMm: readonly PaperPoint[]): readonly [number, number, number, number] | null {
  const [a, b, c, d] = pointsMm.map(([x, y]) => [hundredths(x), hundredths(y)] as const);
  if (pointsMm.length !== 4 || !(a && b && c && d)) return null;
  const isUpright = a[1] === b[1] && b[0] === c[0] && c[1] === d[1] && d[0] === a[0];
  return isUpright ? [a[0], a[1], c[0] - a[0], c[1] - a[1]] : null;
}

/** An arc as cubic curves, one for each quarter turn or less: off from the circle by under 0.03 % of its radius. */
function arcPath(mark: ArcMark): string {
  const sweep = mark.endRad - mark.startRad;
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / (Math.PI / 2) - 1e-9));
  const step = sweep / count;
  const reach = (4 / 3) * Math.tan(step / 4) * mark.radiusMm;
  const at = (turn: number, out: number) => {
    const x = mark.centreMm[0] + mark.radiusMm * Math.cos(turn) - out * Math.sin(turn);
    const y = mark.centreMm[1] + mark.radiusMm * Math.sin(turn) + out * Math.cos(turn);
    return `${points(x)} ${points(y)}`;
  };
  const curves = Array.from({ length: count }, (_, index) => {
    const [from, to] = [mark.startRad + index * step, mark.startRad + (index + 1) * step];
    return `${at(from, reach)} ${at(to, -reach)} ${at(to, 0)} c`;
  });
  return [`${at(mark.startRad, 0)} m`, ...curves].join(" ");
}

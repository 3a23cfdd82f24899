import type { LayerNames } from "../../model/layerNames.ts";
import { fixedText } from "../../units/fixedText.ts";
import { markupText } from "../../units/markupText.ts";
import {
  type ArcMark,
  type Fill,
  type ImageMark,
  type LineMark,
  layers,
  type Mark,
  marksByLayer,
  pensMm,
  type Sheet,
  type TextMark,
} from "./displayList.ts";
import { type FontFace, textRuns } from "./measureText.ts";

/** What a face is called where the picture is shown. */
type FaceName = { readonly family: string; readonly weight: number };
export type FaceNames = Readonly<Record<FontFace, FaceName>>;

/** As a system that has the families installed knows them, and as the window's style sheet does. */
const installed: FaceNames = {
  narrow: { family: "Barlow Condensed", weight: 500 },
  narrowBold: { family: "Barlow Condensed", weight: 600 },
  plain: { family: "IBM Plex Sans Condensed", weight: 400 },
  plainBold: { family: "IBM Plex Sans Condensed", weight: 600 },
  symbols: { family: "DejaVu Sans Condensed", weight: 400 },
};

/** One sheet as an SVG document in paper millimetres; the same sheet gives the same text. */
export function writeSvg(sheet: Sheet, layerNames: LayerNames = new Map(), faces: FaceNames = installed): string {
  const { width, height } = sheet.sizeMm;
  const size = `width="${figure(width)}mm" height="${figure(height)}mm" viewBox="0 0 ${figure(width)} ${figure(height)}"`;
  const byLayer = marksByLayer(sheet);
  const groups = layers.flatMap((layer) =>
    group(layerNames.get(layer) ?? layer, byLayer.get(layer) ?? [], { heightMm: height, faces }),
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}>\n<title>${markupText(sheet.title)}</title>\n${groups.join("\n")}\n</svg>\n`;
}

type Page = { readonly heightMm: number; readonly faces: FaceNames };

function group(layer: string, marks: readonly Mark[], page: Page): readonly string[] {
  if (marks.length === 0) return [];
  return [`<g data-layer="${layer}">`, ...marks.map((mark) => markText(mark, page)), "</g>"];
}

function markText(mark: Mark, page: Page): string {
  switch (mark.kind) {
    case "line":
      return lineText(mark, page.heightMm);
    case "arc":
      return arcText(mark, page.heightMm);
    case "text":
      return textText(mark, page);
    case "image":
      return imageText(mark, page.heightMm);
    default:
      return assertNever(mark);
  }
}

function lineText(mark: LineMark, heightMm: number): string {
  const path = mark.pointsMm
    .map(([x, y], index) => `${index === 0 ? "M" : "L"}${figure(x)} ${figure(heightMm - y)}`)
    .join("");
  const dash = mark.dashMm.length === 0 ? "" : ` stroke-dasharray="${mark.dashMm.map(figure).join(" ")}"`;
  return `<path d="${path}${mark.closed ? "Z" : ""}"${paint(mark)}${dash}/>`;
}

function arcText(mark: ArcMark, heightMm: number): string {
  const [x, y] = mark.centreMm;
  const sweep = mark.endRad - mark.startRad;
  if (sweep >= 2 * Math.PI - 1e-9) {
    return `<circle cx="${figure(x)}" cy="${figure(heightMm - y)}" r="${figure(mark.radiusMm)}"${paint(mark)}/>`;
  }
  const at = (turn: number) =>
    `${figure(x + mark.radiusMm * Math.cos(turn))} ${figure(heightMm - y - mark.radiusMm * Math.sin(turn))}`;
  const radius = figure(mark.radiusMm);
  return `<path d="M${at(mark.startRad)}A${radius} ${radius} 0 ${sweep > Math.PI ? 1 : 0} 0 ${at(mark.endRad)}"${paint(mark)}/>`;
}

function textText(mark: TextMark, { heightMm, faces }: Page): string {
  const runs = textRuns(mark.text, mark.face, mark.heightMm);
  const width = runs.reduce((sum, run) => sum + run.widthMm, 0);
  const turn = mark.turnRad === 0 ? "" : ` rotate(${figure((-mark.turnRad * 180) / Math.PI)})`;
  const place = `translate(${figure(mark.atMm[0])} ${figure(heightMm - mark.atMm[1])})${turn}`;
  let x = mark.align === "left" ? 0 : mark.align === "middle" ? -width / 2 : -width;
  const spans = runs.map((run) => {
    const { family, weight } = faces[run.font];
    const font = `font-family='"${family}", sans-serif' font-weight="${weight}" font-size="${figure(run.sizeMm)}"`;
    const text = `<tspan x="${figure(x)}" ${font} textLength="${figure(run.widthMm)}" lengthAdjust="spacingAndGlyphs">${markupText(run.text)}</tspan>`;
    x += run.widthMm;
    return text;
  });
  return `<text transform="${place}" fill="${ink(mark.grey)}" xml:space="preserve">${spans.join("")}</text>`;
}

function imageText({ boxMm: [x, y, width, height], href, told }: ImageMark, heightMm: number): string {
  const place = `x="${figure(x)}" y="${figure(heightMm - y - height)}" width="${figure(width)}" height="${figure(height)}"`;
  return `<image ${place} preserveAspectRatio="none" href="${markupText(href)}"><title>${markupText(told)}</title></image>`;
}

function paint(mark: LineMark | ArcMark): string {
  const stroke =
    mark.pen === null
      ? ""
      : ` stroke="#000" stroke-width="${figure(pensMm[mark.pen])}" stroke-linecap="round" stroke-linejoin="round"`;
  return ` fill="${ink(mark.fill)}"${stroke}`;
}

function ink(fill: Fill): string {
  if (fill === null) return "none";
  const [red, green, blue] = typeof fill === "number" ? [fill, fill, fill] : fill;
  return `#${[red, green, blue]
    .map((one) =>
      Math.round(one * 255)
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`;
}

function figure(value: number): string {
  return String(Number(fixedText(value, 3)));
}

function assertNever(mark: never): never {
  throw new Error(`no way to draw ${JSON.stringify(mark)}`);
}

import {
  type ArcMark,
  type Fill,
  type Layer,
  type LineMark,
  layers,
  type Mark,
  marksByLayer,
  pensMm,
  type Sheet,
  type TextMark,
} from "../../core/sheets/displayList.ts";
import { type FontFace, textRuns } from "../../core/sheets/measureText.ts";
import { type LowFont, layerName } from "./writePdfObjects.ts";

const pointsPerMm = 72 / 25.4;

/**
 * A sheet as PDF page content: layer by layer, neighbouring marks of one pen and fill as one path. Coordinates are rounded to a
 * hundredth of a point.
 *
 * @param fontOf  the font to draw a run of text with
 */
export function pdfContent(sheet: Sheet, fontOf: (face: FontFace) => LowFont): string {
  // the library starts a page with y down; this turns it up again
  const upright = `1 0 0 -1 0 ${points(sheet.sizeMm.height)} cm 1 j 1 J`;
  const byLayer = marksByLayer(sheet);
  return [upright, ...layers.flatMap((layer) => layerContent(layer, byLayer.get(layer) ?? [], fontOf))].join("\n");
}

function layerContent(layer: Layer, marks: readonly Mark[], fontOf: (face: FontFace) => LowFont): readonly string[] {
  if (marks.length === 0) return [];
  const parts: string[] = [`/OC /${layerName(layer)} BDC`];
  let style = "";
  let path: string[] = [];
  const flush = () => {
    if (path.length > 0) parts.push("q", style, ...path, "Q");
    path = [];
  };
  for (const mark of marks) {
    const next = styleOf(mark);
    if (mark.kind === "text" || next.key !== style) flush();
    switch (mark.kind) {
      case "line":
        path.push(linePath(mark));
        break;
      case "arc":
        path.push(arcPath(mark));
        break;
      case "text":
        parts.push(textContent(mark, fontOf));
        break;
      default:
        return assertNever(mark);
    }
    style = next.key;
    if (mark.kind !== "text") path.push(next.paint);
  }
  flush();
  parts.push("EMC");
  return parts;
}

/** How a mark is drawn: what sets pen, dash and ink, and what then paints its path. */
type Style = { readonly key: string; readonly paint: string };
const textStyle: Style = { key: "", paint: "" };

function styleOf(mark: Mark): Style {
  if (mark.kind === "text") return textStyle;
  const pen = mark.pen === null ? "" : `${points(pensMm[mark.pen])} w`;
  const dash = mark.kind === "line" && mark.dashMm.length > 0 ? `[${mark.dashMm.map(points).join(" ")}] 0 d` : "";
  const paint = mark.fill === null ? "S" : mark.pen === null ? "f" : "B";
  return { key: [pen, dash, inkOf(mark.fill)].filter((one) => one !== "").join(" "), paint };
}

function inkOf(fill: Fill): string {
  if (fill === null) return "";
  return typeof fill === "number" ? `${rounded(fill)} g` : `${fill.map(rounded).join(" ")} rg`;
}

function linePath(mark: LineMark): string {
  const steps = mark.pointsMm.map(([x, y], index) => `${points(x)} ${points(y)} ${index === 0 ? "m" : "l"}`);
  return steps.join(" ") + (mark.closed ? " h" : "");
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

function textContent(mark: TextMark, fontOf: (face: FontFace) => LowFont): string {
  const runs = textRuns(mark.text, mark.face, mark.heightMm);
  const width = runs.reduce((sum, run) => sum + run.widthMm, 0);
  const [cos, sin] = [Math.cos(mark.turnRad), Math.sin(mark.turnRad)];
  let along = mark.align === "left" ? 0 : mark.align === "middle" ? -width / 2 : -width;
  const turned = mark.turnRad === 0 ? "1 0 0 1" : [cos, sin, -sin, cos].map((one) => Number(one.toFixed(5))).join(" ");
  const shown = runs.map((run) => {
    const font = fontOf(run.font);
    const [x, y] = [mark.atMm[0] + along * cos, mark.atMm[1] + along * sin];
    along += run.widthMm;
    return `/${font.name} ${points(run.sizeMm)} Tf ${turned} ${points(x)} ${points(y)} Tm <${font.hex(run.text)}> Tj`;
  });
  return `BT ${rounded(mark.grey)} g ${shown.join(" ")} ET`;
}

function points(mm: number): string {
  return rounded(mm * pointsPerMm);
}

function rounded(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function assertNever(mark: never): never {
  throw new Error(`no way to draw ${JSON.stringify(mark)}`);
}

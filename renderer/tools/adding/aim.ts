import type { Point } from "../../../core/plant/geometry.ts";
import { ringPx } from "../../canvas/level.ts";
import type { Picture } from "../../canvas/paint.ts";
import { at } from "../../canvas/spanMarks.ts";
import { groundAt, screenX, screenY } from "../../canvas/viewport.ts";

/** What lies under the hand for a tool that adds: a pole before a span, and the point itself. */
export type Aim = {
  readonly x: number;
  readonly y: number;
  readonly poleId: string | null;
  readonly span: SpanAim | null;
  /** The point of the page, m; a point of the ground only while the page is true to it. */
  readonly point: Point;
};

export type SpanAim = {
  readonly spanId: string;
  /** From the span's first pole, m. */
  readonly offsetM: number;
  readonly awayPx: number;
};

const poleReachPx = 7;
const spanReachPx = 9;

/** What a click at a pixel of the diagram means. */
export function aimAt(picture: Picture, x: number, y: number): Aim {
  const point = groundAt(picture.view, x, y);
  const reachM = 40 / picture.view.pxPerM;
  const around = {
    westM: point.eastM - reachM,
    eastM: point.eastM + reachM,
    southM: point.northM - reachM,
    northM: point.northM + reachM,
  };
  const { poles, spans } = picture.scene;
  const nearest = poles.index
    .within(around)
    .map((i) => ({
      id: poles.ids[i] ?? "",
      awayPx: distancePx(picture, at(poles.eastM, i), at(poles.northM, i), x, y),
    }))
    .sort((a, b) => a.awayPx - b.awayPx)[0];
  const onSpans = spans.index.within(around).map((i) => spanAim(picture, i, x, y));
  const span = onSpans.filter((one) => one.awayPx <= spanReachPx).sort((a, b) => a.awayPx - b.awayPx)[0];
  const isOnPole = nearest !== undefined && nearest.awayPx <= ringPx(picture.view) + poleReachPx;
  return { x, y, poleId: isOnPole ? nearest.id : null, span: span ?? null, point };
}

/** The point of one span nearest to a pixel: where a drag that began on it has come to. */
export function alongSpan(picture: Picture, spanId: string, x: number, y: number): SpanAim | null {
  const i = picture.scene.spans.positionOf.get(spanId);
  return i === undefined ? null : spanAim(picture, i, x, y);
}

function spanAim({ scene: { spans }, view }: Picture, i: number, x: number, y: number): SpanAim {
  const ax = screenX(view, at(spans.fromEastM, i));
  const ay = screenY(view, at(spans.fromNorthM, i));
  const dx = screenX(view, at(spans.toEastM, i)) - ax;
  const dy = screenY(view, at(spans.toNorthM, i)) - ay;
  const part = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / Math.max(1e-9, dx * dx + dy * dy)));
  const awayPx = Math.hypot(x - ax - dx * part, y - ay - dy * part);
  return { spanId: spans.ids[i] ?? "", offsetM: part * at(spans.lengthM, i), awayPx };
}

function distancePx({ view }: Picture, eastM: number, northM: number, x: number, y: number): number {
  return Math.hypot(screenX(view, eastM) - x, screenY(view, northM) - y);
}

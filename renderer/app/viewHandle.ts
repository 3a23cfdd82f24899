import { refsWithin, screenPoint } from "../canvas/hitTest.ts";
import { terminalPlacePx, tickPitchPx, tickPoint } from "../canvas/hungPlace.ts";
import type { Picture } from "../canvas/paint.ts";
import { groundAt, shownBox, zoomOf } from "../canvas/viewport.ts";
import { refKey } from "./ref.ts";
import type { Session } from "./session.ts";

type FrameStats = {
  readonly count: number;
  readonly medianMs: number;
  readonly p95Ms: number;
  readonly worstMs: number;
};

/** What a test may ask of the diagram, which is opaque to it otherwise. */
export type ViewHandle = {
  /** Middle of a row's symbol in page pixels; ids of poles, terminals, living units, spans, crossings, coils, closures, guys, structures, ground points. */
  readonly toScreen: (id: string) => { readonly x: number; readonly y: number } | null;
  /** Middle of a port's tick in page pixels; null where ticks are not drawn. */
  readonly portToScreen: (terminalId: string, port: number) => { readonly x: number; readonly y: number } | null;
  readonly toWorld: (x: number, y: number) => { readonly eastM: number; readonly northM: number };
  readonly scale: () => number;
  readonly visibleIds: () => readonly string[];
  readonly selection: () => readonly string[];
  /** Times between frames since the last call. */
  readonly frameStats: () => FrameStats;
};

declare global {
  interface Window {
    __view?: ViewHandle;
  }
}

const drawnTables = [
  "pole",
  "terminal",
  "livingUnit",
  "span",
  "crossing",
  "slack",
  "closure",
  "guy",
  "structure",
  "groundPoint",
] as const;

/** Puts the test handle on the page; only where its address asks for it. */
export function offerViewHandle(session: Session, picture: () => Picture | null, stage: () => DOMRect): void {
  if (!new URLSearchParams(location.search).has("view-handle")) return;
  const frames = watchFrames();
  const ids = (refs: readonly string[]): string[] => refs.map((ref) => ref.slice(ref.indexOf("/") + 1));
  // what is on the page now, which the view may be ahead of
  const drawn = () => picture()?.view ?? session.view.getState().viewport;
  window.__view = {
    toScreen(id) {
      const now = picture();
      if (!now) return null;
      for (const table of drawnTables) {
        const point = screenPoint(now, refKey(table, id));
        if (point) return { x: stage().x + point[0], y: stage().y + point[1] };
      }
      return null;
    },
    portToScreen(terminalId, port) {
      const now = picture();
      const mark = now?.scene.terminals.marks[now.scene.terminals.positionOf.get(terminalId) ?? -1];
      const tick = now?.level === "labels" ? mark?.ticks[port - 1] : undefined;
      if (!now || !mark || !tick) return null;
      const [x, y] = tickPoint(terminalPlacePx(mark, now.view), mark, tick, tickPitchPx(now.view));
      return { x: stage().x + x, y: stage().y + y };
    },
    toWorld: (x, y) => groundAt(drawn(), x - stage().x, y - stage().y),
    scale: () => zoomOf(drawn()),
    visibleIds() {
      const now = picture();
      return now ? ids(refsWithin(now, shownBox(now.view, 0))) : [];
    },
    selection: () => ids(session.view.getState().selection),
    frameStats: frames,
  };
}

function watchFrames(): () => FrameStats {
  let gaps: number[] = [];
  let beforeMs = performance.now();
  const step = (nowMs: number): void => {
    gaps.push(nowMs - beforeMs);
    if (gaps.length > 5000) gaps = gaps.slice(-2500);
    beforeMs = nowMs;
    requestAnimationFrame(step);
  };
  requestAnimationFrame(step);
  return () => {
    const sorted = gaps.sort((a, b) => a - b);
    gaps = [];
    const rank = (part: number): number => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? 0;
    return { count: sorted.length, medianMs: rank(0.5), p95Ms: rank(0.95), worstMs: sorted.at(-1) ?? 0 };
  };
}

import type { KeptView } from "../../core/contract/wayMethods.ts";
import type { Session } from "../app/session.ts";
import { keepWays } from "../app/ways.ts";
import { isDrawable, type Viewport } from "../canvas/viewport.ts";

const settleMs = 300;

/** Shows the part of the page this file was left at; false where it was never looked at here. */
export function recallView(session: Session): boolean {
  const { ways, drawnAs } = session.view.getState();
  const kept = ways.views[drawnAs];
  if (!kept || !isDrawable(kept.pxPerM)) return false;
  session.view.setState(({ viewport }) => ({ viewport: withUpperLeft(viewport, kept) }));
  return true;
}

/** Keeps the view of the open file on this machine whenever it has come to rest. */
export function keepView(session: Session): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const keep = (): void => {
    const { viewport, ways, drawnAs } = session.view.getState();
    keepWays(session, { views: { ...ways.views, [drawnAs]: upperLeftOf(viewport) } });
  };
  const stop = session.view.subscribe((now, before) => {
    if (now.viewport === before.viewport) return;
    clearTimeout(timer);
    timer = setTimeout(keep, settleMs);
  });
  window.addEventListener("pagehide", keep);
  return () => {
    window.removeEventListener("pagehide", keep);
    clearTimeout(timer);
    stop();
  };
}

/** Panels come and go at the right and below: the upper left is what stays where it is. */
function upperLeftOf({ centreEastM, centreNorthM, pxPerM, widthPx, heightPx }: Viewport): KeptView {
  return { leftEastM: centreEastM - widthPx / 2 / pxPerM, topNorthM: centreNorthM + heightPx / 2 / pxPerM, pxPerM };
}

function withUpperLeft(viewport: Viewport, { leftEastM, topNorthM, pxPerM }: KeptView): Viewport {
  const { widthPx, heightPx } = viewport;
  return {
    ...viewport,
    pxPerM,
    centreEastM: leftEastM + widthPx / 2 / pxPerM,
    centreNorthM: topNorthM - heightPx / 2 / pxPerM,
  };
}

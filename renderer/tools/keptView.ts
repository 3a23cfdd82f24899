import type { Session } from "../app/session.ts";
import { isDrawable } from "../canvas/viewport.ts";

const settleMs = 300;

/** Shows the part of the ground this file was left at; false where it was never looked at here. */
export function recallView(session: Session): boolean {
  const kept = readKept(keyOf(session));
  if (!kept) return false;
  const [centreEastM, centreNorthM, pxPerM] = kept;
  session.view.setState(({ viewport }) => ({ viewport: { ...viewport, centreEastM, centreNorthM, pxPerM } }));
  return true;
}

/** Keeps the view of the open file on this machine whenever it has come to rest. */
export function keepView(session: Session): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const keep = (): void => {
    const { centreEastM, centreNorthM, pxPerM } = session.view.getState().viewport;
    localStorage.setItem(keyOf(session), JSON.stringify([centreEastM, centreNorthM, pxPerM]));
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

function keyOf(session: Session): string {
  const open = session.store.get();
  const { drawnAs } = session.view.getState();
  return ["strandwright.view", open?.fileName, open?.plant.settings().routeName, drawnAs].join(".");
}

/** What was kept, where it is three figures a view can be made of: other hands may have written there. */
function readKept(key: string): readonly [number, number, number] | null {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? "null");
    if (!Array.isArray(kept) || kept.length !== 3) return null;
    const [east, north, pxPerM]: readonly unknown[] = kept;
    if (typeof east !== "number" || typeof north !== "number" || typeof pxPerM !== "number") return null;
    return isDrawable(pxPerM) ? [east, north, pxPerM] : null;
  } catch {
    return null;
  }
}

import type { Session } from "./session.ts";

const restMs = 300;
const leastPx = 140;
/** Of the window, so that the diagram always keeps a place. */
const mostFrac = 0.6;

/** A panel's size as it may be in a window of this size. */
export function boundedPx(sizePx: number, windowPx: number): number {
  return Math.round(Math.max(leastPx, Math.min(windowPx * mostFrac, sizePx)));
}

/** Takes up the layout this machine kept, and keeps it after every change. Ends with the function it answers with. */
export function keepLayout(session: Session): () => void {
  const { host, view } = session;
  let rest: ReturnType<typeof setTimeout> | undefined;
  let kept = "";
  const present = () => {
    const { sideWidthPx, findingsHeightPx, isSideOpen, isFindingsOpen } = view.getState();
    return { sideWidthPx, findingsHeightPx, isSideOpen, isFindingsOpen };
  };
  const watch = view.subscribe(() => {
    const layout = present();
    const text = JSON.stringify(layout);
    if (kept === "" || text === kept) return;
    kept = text;
    clearTimeout(rest);
    rest = setTimeout(() => void host.call("panels.layout", { keep: layout }), restMs);
  });
  void host.call("panels.layout", {}).then((reply) => {
    if (reply.ok && reply.value.layout) view.setState(reply.value.layout);
    kept = JSON.stringify(present());
  });
  return () => {
    clearTimeout(rest);
    watch();
  };
}

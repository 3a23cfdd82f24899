import type { Session } from "./session.ts";

const restMs = 300;
const leastPx = 140;
/** Of the window, so that the diagram always keeps a place. */
const mostFrac = 0.6;

/** A panel's size as it may be in a window of this size. */
export function boundedPx(sizePx: number, windowPx: number): number {
  return Math.round(Math.max(leastPx, Math.min(windowPx * mostFrac, sizePx)));
}

/** Takes up the layout this machine kept, before the window is drawn. */
export async function readLayout({ host, view }: Session): Promise<void> {
  const reply = await host.call("panels.layout", {});
  if (reply.ok && reply.value.layout) view.setState(reply.value.layout);
}

/** Keeps the layout after every change, also of a window about to go. Ends with the function it answers with. */
export function keepLayout({ host, view }: Session): () => void {
  let rest: ReturnType<typeof setTimeout> | undefined;
  const present = () => {
    const { sideWidthPx, findingsHeightPx, isSideOpen, isFindingsOpen } = view.getState();
    return { sideWidthPx, findingsHeightPx, isSideOpen, isFindingsOpen };
  };
  let kept = JSON.stringify(present());
  const keep = (): void => {
    clearTimeout(rest);
    rest = undefined;
    void host.call("panels.layout", { keep: present() });
  };
  const keepWhatWaits = (): void => {
    if (rest !== undefined) keep();
  };
  const watch = view.subscribe(() => {
    const text = JSON.stringify(present());
    if (text === kept) return;
    kept = text;
    clearTimeout(rest);
    rest = setTimeout(keep, restMs);
  });
  window.addEventListener("pagehide", keepWhatWaits);
  return () => {
    keepWhatWaits();
    window.removeEventListener("pagehide", keepWhatWaits);
    watch();
  };
}

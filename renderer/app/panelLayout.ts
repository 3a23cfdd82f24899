import type { PanelLayout } from "../../core/contract/settingsMethods.ts";
import type { Session } from "./session.ts";

const leastPx = 140;
/** Of the window, so that the diagram always keeps a place. */
const mostFrac = 0.6;

/** A panel's size as it may be in a window of this size. */
export function boundedPx(sizePx: number, windowPx: number): number {
  return Math.round(Math.max(leastPx, Math.min(windowPx * mostFrac, sizePx)));
}

/** Places the panels, and those below the diagram among them. */
export function setLayout(
  { view }: Session,
  { tablesFrac, areTablesBeside, profileFrac, balanceFrac, tracesFrac, closeoutFrac, ...panels }: PanelLayout,
): void {
  view.setState(({ tables, profile, balance, traces, closeout }) => ({
    ...panels,
    tables: { ...tables, sizeFrac: tablesFrac, isBeside: areTablesBeside },
    profile: { ...profile, sizeFrac: profileFrac },
    balance: { ...balance, sizeFrac: balanceFrac },
    traces: { ...traces, sizeFrac: tracesFrac },
    closeout: { ...closeout, sizeFrac: closeoutFrac },
  }));
}

/** Takes up the layout this machine kept, before the window is drawn. */
export async function readLayout(session: Session): Promise<void> {
  const reply = await session.host.call("panels.layout", {});
  if (reply.ok && reply.value.layout) setLayout(session, reply.value.layout);
}

/** Keeps the layout after every change. Ends with the function it answers with. */
export function keepLayout({ host, view }: Session): () => void {
  const present = (): PanelLayout => {
    const { sideWidthPx, findingsHeightPx, isSideOpen, isFindingsOpen, ...rooms } = view.getState();
    const { sizeFrac: tablesFrac, isBeside: areTablesBeside } = rooms.tables;
    const panels = { sideWidthPx, findingsHeightPx, isSideOpen, isFindingsOpen };
    const below = {
      profileFrac: rooms.profile.sizeFrac,
      balanceFrac: rooms.balance.sizeFrac,
      tracesFrac: rooms.traces.sizeFrac,
      closeoutFrac: rooms.closeout.sizeFrac,
    };
    return { ...panels, tablesFrac, areTablesBeside, ...below };
  };
  let kept = JSON.stringify(present());
  let isSending = false;
  /** At once, so that a window closed right after keeps it too; while one is under way only the latest waits. */
  const send = async (): Promise<void> => {
    if (isSending) return;
    isSending = true;
    for (let layout = present(); kept !== JSON.stringify(layout); layout = present()) {
      kept = JSON.stringify(layout);
      await host.call("panels.layout", { keep: layout });
    }
    isSending = false;
  };
  return view.subscribe(() => void send());
}

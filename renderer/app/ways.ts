import type { FileWays } from "../../core/contract/wayMethods.ts";
import type { Session } from "./session.ts";

/** Changes how the file shown is looked at, here and for the next time it is opened on this machine. */
export function keepWays({ host, store, view }: Session, change: Partial<FileWays>): void {
  const open = store.get();
  if (!open) return;
  const ways = { ...view.getState().ways, ...change };
  view.setState({ ways });
  void host.call("route.ways", { routeId: open.routeId, keep: ways });
}

import type { EditReply } from "../../core/contract/contract.ts";
import { plainWays } from "../../core/contract/wayMethods.ts";
import type { Fault } from "../../core/model/result.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { stillThere } from "../balance/balanceView.ts";
import { withoutGone } from "../tools/adding/addingState.ts";
import { handRef } from "../tools/hand.ts";
import type { HostClient } from "./hostClient.ts";
import { type RefKey, splitRef } from "./ref.ts";
import { type OpenRoute, openRouteStore, type RouteStore } from "./routeStore.ts";
import { openViewStore, say, type ViewStore } from "./viewStore.ts";

/** Everything one window works with: the host it asks, the route it was told, and the view of it. */
export type Session = { readonly host: HostClient; readonly store: RouteStore; readonly view: ViewStore };

/** A session on a host; shows the first route the host has open and follows its events. */
export function openSession(host: HostClient): Session {
  const session: Session = { host, store: openRouteStore(), view: openViewStore() };
  host.on((event) => {
    if (event.kind === "progress") {
      const { job } = session.view.getState();
      if (job?.jobId === event.jobId) {
        const { doneCount, totalCount, words } = event;
        session.view.setState({ job: { ...job, doneCount, totalCount, words } });
      }
      return;
    }
    if (event.kind === "edited" && session.store.get()?.routeId === event.routeId) void takeEdit(session, event.edit);
  });
  return session;
}

/** Reads the route the host has open, the one asked for by the page's address where there is one. */
export async function readRoute(session: Session, wantedId: string | null): Promise<void> {
  const list = await session.host.call("route.list", {});
  if (!list.ok) return showFault(session, list.fault);
  const { routes } = list.value;
  const chosen = routes.find((one) => one.routeId === wantedId) ?? routes[0];
  if (!chosen) return session.store.close();
  const { routeId } = chosen;
  const [read, kept] = await Promise.all([
    session.host.call("route.read", { routeId }),
    session.host.call("route.ways", { routeId }),
  ]);
  if (!read.ok) return showFault(session, read.fault);
  session.view.setState({ ways: kept.ok ? kept.value.ways : plainWays });
  const opened = session.store.open(routeId, read.value);
  if (!opened.ok) return showFault(session, opened.fault);
  document.title = `${chosen.routeName} - Strandwright`;
}

/**
 * Takes in an edit from a reply or an event, at once so that what follows is drawn together with it; where host and window
 * have parted the whole route is read again, and the promise ends when it is there.
 */
export function takeEdit(session: Session, edit: EditReply): Promise<void> | null {
  const open = session.store.get();
  if (!open) return null;
  if (!session.store.take(edit).ok) return readRoute(session, open.routeId).then(() => forgetGone(session));
  forgetGone(session);
  return null;
}

/** The route, where there must be one. */
export function openRouteOf(session: Session): OpenRoute {
  const open = session.store.get();
  if (!open) throw new Error("asked for a route while none is open");
  return open;
}

/** Units a person reads in this route. */
export function unitsOf(open: OpenRoute | null): UnitSystem {
  return open ? (open.route.settings.get("settings")?.unitSystem ?? "us") : "us";
}

/** Shows what could not be done: what, where, how to mend it. */
export function showFault(session: Session, fault: Fault): void {
  session.view.setState({ fault });
}

/** Says a thing happened. */
export function tell(session: Session, words: string): void {
  say(session.view, words);
}

/** What is gone is no longer chosen, under the hand or gone on from. */
function forgetGone({ store, view }: Session): void {
  const route = store.get()?.route;
  const isThere = (ref: RefKey): boolean => {
    const { table, id } = splitRef(ref);
    return route?.[table].has(id) ?? false;
  };
  const { selection, hover, inPlace, exact, hand, adding } = view.getState();
  const kept = selection.filter(isThere);
  if (kept.length < selection.length) view.setState({ selection: kept });
  if (hover !== null && !isThere(hover)) view.setState({ hover: null });
  if (inPlace !== null && !isThere(inPlace)) view.setState({ inPlace: null });
  if (exact && !isThere(`terminal/${exact.terminalId}`)) view.setState({ exact: null });
  if (hand && !isThere(handRef(hand))) view.setState({ hand: null });
  // what a move would come to was worked out on the route as it was
  view.setState(({ balance }) => ({ balance: stillThere(balance, isThere) }));
  if (adding) view.setState({ adding: withoutGone(adding, isThere) });
}

import { frozenFault } from "../../core/closeout/signatures.ts";
import type { Request } from "../../core/contract/contract.ts";
import type { Result } from "../../core/model/result.ts";
import { readRoute, type Session, showFault, tell } from "./session.ts";
import { words } from "./words.ts";

/** Follows what the host says about files, and its being there at all. */
export function followFiles(session: Session): void {
  const { host, store, view } = session;
  host.on((event) => {
    const shown = store.get()?.routeId;
    if (event.kind === "routes") void followRoutes(session);
    if (event.kind === "trouble") showFault(session, event.fault);
    if (event.kind === "replaced" && event.routeId === shown) void readAgain(session, event.routeId);
    if (event.kind === "edited" && event.routeId === shown) void readFileState(session);
  });
  host.onLink?.((isUp) => {
    if (isUp === !view.getState().isHostAway) return;
    view.setState({ isHostAway: !isUp });
    if (isUp) void takeUpAgain(session);
  });
}

/** Reads which routes are open and how the one shown stands; shows round where that is due. */
export async function startFiles(session: Session, demoFileName: string): Promise<void> {
  await followRoutes(session);
  const start = await session.host.call("files.start", {});
  if (start.ok && start.value.isGuideDue && session.store.get()?.fileName === demoFileName) {
    session.view.setState({ guideStep: 0 });
  }
}

/** Shows a route that is open. */
export async function showRoute(session: Session, routeId: string): Promise<void> {
  session.view.setState({ selection: [], hover: null, sheets: null, fault: null, isStartOpen: false, fileState: null });
  await readRoute(session, routeId);
  keepInAddress(routeId);
  await readFileState(session);
}

/** Asks for a route to be opened or made, and shows it; true where it was. */
export async function openAndShow(session: Session, ask: Promise<Result<{ routeId: string }>>): Promise<boolean> {
  const opened = await ask;
  if (!opened.ok) {
    showFault(session, opened.fault);
    return false;
  }
  await listRoutes(session);
  await showRoute(session, opened.value.routeId);
  return true;
}

/** Opens the demo route, and shows round where nobody was yet. */
export async function openDemo(session: Session): Promise<boolean> {
  const start = await session.host.call("files.start", {});
  const isOpen = await openAndShow(session, session.host.call("files.openDemo", {}));
  if (isOpen && start.ok && start.value.isGuideDue) session.view.setState({ guideStep: 0 });
  return isOpen;
}

/** Makes a route file and shows it; the import comes next where that is wanted. */
export async function makeRoute(
  session: Session,
  made: Request<"files.create">,
  thenImport: boolean,
): Promise<boolean> {
  const isOpen = await openAndShow(session, session.host.call("files.create", made));
  if (isOpen) session.view.setState({ isImportOpen: thenImport });
  return isOpen;
}

/** Closes a route for every window; the next open one is shown. */
export async function closeRoute(session: Session, routeId: string): Promise<void> {
  const closed = await session.host.call("files.close", { routeId });
  if (!closed.ok) showFault(session, closed.fault);
}

/** Shows the open route after the one shown. */
export async function showNextRoute(session: Session): Promise<void> {
  const { routes } = session.view.getState();
  const at = routes.findIndex((one) => one.routeId === session.store.get()?.routeId);
  const next = routes[(at + 1) % routes.length];
  if (next) await showRoute(session, next.routeId);
}

/** Looks again at a route somebody else has; it can be edited where it is free now. */
export async function lookAgain(session: Session): Promise<void> {
  const open = session.store.get();
  if (!open) return;
  const looked = await session.host.call("files.lookAgain", { routeId: open.routeId });
  if (!looked.ok) showFault(session, looked.fault);
  else tell(session, looked.value.isEditable ? words.yoursNow : words.shownAsNow);
}

/** Why the route shown may not be changed, or null. */
export function lookOnlyReason(session: Session): string | null {
  const { isHostAway, fileState } = session.view.getState();
  if (isHostAway) return words.hostAway.what;
  if (fileState?.lookOnly) return words.lookOnly;
  const open = session.store.get();
  return open && frozenFault(open.route) ? words.frozen : null;
}

/** Reads when the route shown was last edited and whether it may be. */
async function readFileState(session: Session): Promise<void> {
  const routeId = session.store.get()?.routeId;
  if (routeId === undefined) return session.view.setState({ fileState: null });
  const state = await session.host.call("files.state", { routeId });
  if (state.ok && session.store.get()?.routeId === routeId) session.view.setState({ fileState: state.value });
}

async function listRoutes(session: Session): Promise<void> {
  const list = await session.host.call("route.list", {});
  if (list.ok) session.view.setState({ routes: list.value.routes });
}

/** Keeps to the route shown while it is open, else shows another. */
async function followRoutes(session: Session): Promise<void> {
  await listRoutes(session);
  const { routes } = session.view.getState();
  const shown = session.store.get()?.routeId;
  if (shown !== undefined && routes.some((one) => one.routeId === shown)) return readFileState(session);
  const [next] = routes;
  if (next) return showRoute(session, next.routeId);
  session.store.close();
  session.view.setState({ selection: [], hover: null, sheets: null, fileState: null, isImportOpen: false });
  document.title = "Strandwright";
}

async function readAgain(session: Session, routeId: string): Promise<void> {
  session.view.setState({ selection: [], hover: null, sheets: null });
  await readRoute(session, routeId);
  await listRoutes(session);
  await readFileState(session);
}

/** The host is back, perhaps started anew: ids may be others, so the file shown is found by its name. */
async function takeUpAgain(session: Session): Promise<void> {
  const fileName = session.store.get()?.fileName;
  await listRoutes(session);
  const { routes } = session.view.getState();
  const same = routes.find((one) => one.fileName === fileName) ?? routes[0];
  session.view.setState({ job: null, isBusy: false, fault: null });
  if (same) await readAgain(session, same.routeId);
  else await followRoutes(session);
  tell(session, words.answersAgain);
}

function keepInAddress(routeId: string): void {
  const address = new URL(location.href);
  address.searchParams.set("route", routeId);
  window.history.replaceState(null, "", address);
}

import type { ViewState } from "./viewStore.ts";

/** What may stand at the side in place of what is chosen. */
export type SideRoom = "history" | "layout" | "revisions" | "packets" | "signOff";

/** The view with a room at the side, and nothing over it. Revisions stand beside sheets on preview too. */
export function besideShown(room: SideRoom): Partial<ViewState> {
  const sheetsAway = room === "revisions" ? {} : { sheets: null };
  return { sideRoom: room, isSideOpen: true, isSettingsOpen: false, isImportOpen: false, ...sheetsAway };
}

/** The view with a room brought to the side, or put away where it stands there already. */
export function besideTurned(room: SideRoom): (state: ViewState) => Partial<ViewState> {
  return (state) => (state.sideRoom === room ? { sideRoom: null } : besideShown(room));
}

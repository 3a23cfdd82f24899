import type { MenuAction } from "../../core/contract/desktopShapes.ts";
import { actionOf, actions, perform } from "./actions.ts";
import type { Session } from "./session.ts";

/** The bridge to the desktop; absent where the window is a browser's. */
type Desktop = {
  readonly offerActions: (actions: readonly MenuAction[]) => void;
  readonly onPerform: (listener: (id: unknown) => void) => () => void;
  /** Opens a route file that was dropped, where it lies. */
  readonly openDropped: (file: File) => void;
  readonly showDrawn: (drawn: { readonly fileName: string; readonly pdfBase64: string }) => Promise<unknown>;
};

declare global {
  interface Window {
    readonly strandwrightDesktop?: Desktop;
  }
}

/** The action table as the desktop's menu shows it now. */
export function menuOf(session: Session): readonly MenuAction[] {
  return actions.map((one) => ({
    id: one.id,
    name: one.name(session),
    key: one.keys[0] ?? null,
    place: one.place,
    isOff: one.blocked(session) !== null,
  }));
}

/** Keeps the desktop's menu as the action table is, and runs what it asks for. Ends with the function it answers with. */
export function followMenu(session: Session): () => void {
  const desktop = window.strandwrightDesktop;
  if (!desktop) return () => {};
  let offered = "";
  const offer = (): void => {
    const menu = menuOf(session);
    const text = JSON.stringify(menu);
    if (text === offered) return;
    offered = text;
    desktop.offerActions(menu);
  };
  const ends = [
    session.store.subscribe(offer),
    session.view.subscribe((now, before) => {
      if (now.viewport === before.viewport && now.hover === before.hover) offer();
    }),
    desktop.onPerform((id) => {
      if (actions.some((one) => one.id === id)) void perform(session, actionOf(String(id)));
    }),
  ];
  offer();
  return () => {
    for (const end of ends) end();
  };
}

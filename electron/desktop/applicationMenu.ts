import type { MenuItemConstructorOptions } from "electron";
import type { MenuAction } from "../../core/contract/desktopShapes.ts";

/** What the menu asks of the desktop itself, beside the window's actions. */
export type MenuDeeds = {
  /** Runs an action of the window in front, by its id. */
  readonly perform: (id: string) => void;
  readonly openFile: () => void;
  readonly isMac: boolean;
};

/** Menus in their order, and the places of the bar whose actions stand in each. */
const menus = [
  { label: "Edit", places: ["history"] },
  { label: "Route", places: ["work"] },
  { label: "Closeout", places: ["closeout"] },
  { label: "View", places: ["view"] },
  { label: "More", places: [null] },
] as const;

/** The menu of the program, made from the window's own action table: same names, same keys, same reasons to be grey. */
export function applicationMenu(actions: readonly MenuAction[], deeds: MenuDeeds): MenuItemConstructorOptions[] {
  const known = new Set<string | null>(menus.flatMap((menu) => [...menu.places]));
  const files = actions.filter((one) => !known.has(one.place));
  const entries = (list: readonly MenuAction[]): MenuItemConstructorOptions[] => list.map((one) => entry(one, deeds));
  const fileMenu: MenuItemConstructorOptions = {
    label: "File",
    submenu: [
      { label: "Open a route file in a window of its own", click: deeds.openFile },
      { role: "recentDocuments", label: "Recent route files", submenu: [{ role: "clearRecentDocuments" }] },
      { type: "separator" },
      ...entries(files),
      { type: "separator" },
      { role: "close" },
      ...(deeds.isMac ? [] : [{ role: "quit" } as const]),
    ],
  };
  const own = menus.map(({ label, places }) => ({
    label,
    submenu: entries(actions.filter((one) => places.some((place) => place === one.place))),
  }));
  return [...(deeds.isMac ? [{ role: "appMenu" } as const] : []), fileMenu, ...own, { role: "windowMenu" }];
}

function entry(action: MenuAction, deeds: MenuDeeds): MenuItemConstructorOptions {
  const key = action.key === null ? {} : { accelerator: accelerator(action.key) };
  return {
    id: action.id,
    label: action.name.replaceAll("&", "&&"),
    enabled: !action.isOff,
    // the page listens for its keys itself; here they are only shown
    registerAccelerator: false,
    ...key,
    click: () => deeds.perform(action.id),
  };
}

/** A key of the action table as Electron writes it. */
function accelerator(key: string): string {
  return key
    .replace("Mod", "CommandOrControl")
    .replace(/\+\+$/, "+Plus")
    .replace(/^\+$/, "Plus")
    .replace("Escape", "Esc");
}

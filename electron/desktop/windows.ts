import { join } from "node:path";
import type { BrowserWindow, BrowserWindowConstructorOptions } from "electron";
import type { HostEvent } from "../../core/contract/contract.ts";
import { windowPlace } from "../../core/contract/desktopShapes.ts";
import { keptJson } from "../host/keptJson.ts";
import { presentPlace } from "./windowPlace.ts";

export type WindowParts = Pick<typeof import("electron"), "BrowserWindow" | "screen">;

type WindowsOptions = {
  readonly make: BrowserWindowConstructorOptions;
  readonly configFolder: string;
  readonly mayNavigate: (address: string) => boolean;
  readonly address: (routeId: string | null) => string;
  /** Listens to the host until the function it answers with is called. */
  readonly listen: (tell: (event: HostEvent) => void) => () => void;
};

/** The windows of the program: one a route. */
export type Windows = {
  /** Shows a route in its window, which is made where there is none. */
  readonly show: (routeId: string | null) => Promise<void>;
  /** Brings a window to the front. */
  readonly raise: () => void;
  /** Tells the window in front. */
  readonly send: (channel: string, word: unknown) => void;
  readonly count: () => number;
};

/** No window yet. Each stands where the last one was closed, on a display that is there. */
export function openWindows({ BrowserWindow, screen }: WindowParts, options: WindowsOptions): Windows {
  const open = new Map<string | null, BrowserWindow>();
  const kept = keptJson(join(options.configFolder, "window-place.json"), windowPlace.nullable(), null);

  const make = (): { readonly window: BrowserWindow; readonly isMaximized: boolean } => {
    const main = screen.getPrimaryDisplay();
    const others = screen.getAllDisplays().filter((one) => one.id !== main.id);
    const areas = [main, ...others].map((one) => one.workArea);
    const { isMaximized, ...bounds } = presentPlace(kept.read(), areas, open.size);
    return { window: new BrowserWindow({ ...options.make, ...bounds }), isMaximized };
  };
  const guard = (window: BrowserWindow): void => {
    window.webContents.setWindowOpenHandler(() => ({ action: "deny" }));
    window.webContents.on("will-navigate", (event) => {
      if (!options.mayNavigate(event.url)) event.preventDefault();
    });
    // every answered edit is in the file: a page that died reads it again
    window.webContents.on("render-process-gone", (_event, { reason }) => {
      if (reason !== "clean-exit") window.reload();
    });
  };

  return {
    async show(routeId) {
      const present = open.get(routeId);
      if (present) return raised(present);
      const { window, isMaximized } = make();
      open.set(routeId, window);
      guard(window);
      const silence = options.listen((event) => window.webContents.send("event", event));
      window.once("ready-to-show", () => {
        if (isMaximized) window.maximize();
        window.show();
      });
      window.on("close", () => kept.write({ ...window.getNormalBounds(), isMaximized: window.isMaximized() }));
      window.on("closed", () => {
        open.delete(routeId);
        silence();
      });
      await window.loadURL(options.address(routeId));
    },
    raise() {
      const [first] = open.values();
      if (first) raised(first);
    },
    send: (channel, word) =>
      (BrowserWindow.getFocusedWindow() ?? [...open.values()][0])?.webContents.send(channel, word),
    count: () => open.size,
  };
}

function raised(window: BrowserWindow): void {
  if (window.isMinimized()) window.restore();
  window.focus();
}

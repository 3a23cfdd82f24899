import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { ok } from "../../../core/model/result.ts";
import type { DesktopOptions, ElectronParts } from "../../../electron/desktop/desktop.ts";
import type { Host } from "../../../electron/host/host.ts";

type Handler = (event: unknown, ...args: unknown[]) => unknown;
export const ownPage = { senderFrame: { url: "strandwright://window/index.html" } };

/** A stand-in for the few parts of Electron the program uses, which notes what it was told. */
export function standIn() {
  const noted = {
    schemes: [] as unknown[],
    loaded: [] as string[],
    sent: [] as unknown[],
    recent: [] as string[],
    menus: [] as unknown[],
    errors: [] as string[],
    opened: [] as string[],
    shownInFolder: [] as string[],
    quitCount: 0,
    shownCount: 0,
    focusCount: 0,
    reloadCount: 0,
    permission: null as boolean | null,
    openedOutside: null as unknown,
    viewerTrouble: "",
  };
  const handlers = new Map<string, Handler>();
  const listeners = new Map<string, Handler>();
  const note = (kind: string) => (name: string, listener: Handler) => void listeners.set(`${kind} ${name}`, listener);
  class BrowserWindow {
    static getFocusedWindow = () => null;
    webContents = {
      setWindowOpenHandler: (decide: (details: unknown) => unknown) => {
        noted.openedOutside = decide({ url: "https://example.org" });
      },
      on: note("page"),
      send: (...words: unknown[]) => noted.sent.push(words),
    };
    on = note("window");
    once = (_name: string, listener: () => void) => listener();
    show = () => {
      noted.shownCount += 1;
    };
    focus = () => {
      noted.focusCount += 1;
    };
    reload = () => {
      noted.reloadCount += 1;
    };
    isMinimized = () => false;
    isMaximized = () => false;
    getNormalBounds = () => ({ x: 40, y: 50, width: 1000, height: 700 });
    loadURL = async (url: string) => void noted.loaded.push(url);
  }
  const display = { id: 1, workArea: { x: 0, y: 0, width: 1920, height: 1040 } };
  const parts = {
    app: {
      whenReady: async () => {},
      on: note("app"),
      quit: () => {
        noted.quitCount += 1;
      },
      addRecentDocument: (path: string) => noted.recent.push(path),
      getPath: () => tmpdir(),
    },
    BrowserWindow,
    dialog: { showErrorBox: (what: string) => noted.errors.push(what) },
    ipcMain: { handle: (name: string, handler: Handler) => handlers.set(name, handler), on: note("ipc") },
    Menu: { buildFromTemplate: (menu: unknown) => menu, setApplicationMenu: (menu: unknown) => noted.menus.push(menu) },
    protocol: { registerSchemesAsPrivileged: (list: unknown[]) => noted.schemes.push(...list), handle: () => {} },
    net: {},
    screen: { getPrimaryDisplay: () => display, getAllDisplays: () => [display] },
    shell: {
      openPath: async (path: string) => {
        noted.opened.push(path);
        return noted.viewerTrouble;
      },
      showItemInFolder: (path: string) => noted.shownInFolder.push(path),
    },
    session: {
      defaultSession: {
        setPermissionRequestHandler: (ask: (page: unknown, name: string, decide: (yes: boolean) => void) => void) =>
          ask(null, "geolocation", (yes) => {
            noted.permission = yes;
          }),
      },
    },
  };
  return { electron: parts as unknown as ElectronParts, noted, handlers, listeners }; // only the parts desktop.ts touches
}

/** A host that notes calls and answers when it is let. */
export function quietHost() {
  const calls: unknown[] = [];
  const state = { isClosed: false, answer: () => {} };
  const host: Host = {
    call: (method, body) => {
      calls.push([method, body]);
      if (method !== "slow") return Promise.resolve({ ok: true, value: "done" });
      return new Promise((done) => {
        state.answer = () => done({ ok: true, value: "late" });
      });
    },
    on: () => () => {},
    add: () => "route-1",
    close: () => {
      state.isClosed = true;
    },
  };
  return { host, calls, state };
}

/** Options as a start on route files gives them; a file's name is its id in the host. */
export function optionsOn(host: Host, paths: readonly string[] = []): DesktopOptions {
  return {
    host,
    paths,
    windowFolder: resolve("window"),
    preload: "bridge.cjs",
    configFolder: mkdtempSync(join(tmpdir(), "strandwright-desktop-")),
    openFile: (path) => ok(path),
  };
}

import { resolve } from "node:path";
import { expect, test } from "vitest";
import { type ElectronParts, openDesktop, pageFile, registerScheme } from "../../../electron/desktop/desktop.ts";
import type { Host } from "../../../electron/host/host.ts";

type Handler = (event: unknown, ...args: unknown[]) => unknown;

/** A stand-in for the few parts of Electron the program uses, which notes what it was told. */
function standIn() {
  const noted = {
    schemes: [] as unknown[],
    loaded: "",
    sent: [] as unknown[],
    quit: false,
    shown: false,
    permission: null as boolean | null,
    openedOutside: null as unknown,
    prevented: false,
  };
  const handlers = new Map<string, Handler>();
  const listeners = new Map<string, Handler>();
  const page = {
    setWindowOpenHandler: (decide: (details: unknown) => unknown) => {
      noted.openedOutside = decide({ url: "https://example.org" });
    },
    on: (name: string, listener: Handler) => listeners.set(`page ${name}`, listener),
    send: (...words: unknown[]) => noted.sent.push(words),
  };
  class BrowserWindow {
    webContents = page;
    once(_name: string, listener: () => void) {
      listener();
    }
    on(name: string, listener: Handler) {
      listeners.set(`window ${name}`, listener);
    }
    show() {
      noted.shown = true;
    }
    async loadURL(url: string) {
      noted.loaded = url;
    }
  }
  const parts = {
    app: {
      whenReady: async () => {},
      on: (name: string, listener: Handler) => listeners.set(`app ${name}`, listener),
      quit: () => {
        noted.quit = true;
      },
    },
    BrowserWindow,
    ipcMain: { handle: (name: string, handler: Handler) => handlers.set(name, handler) },
    protocol: { registerSchemesAsPrivileged: (list: unknown[]) => noted.schemes.push(...list), handle: () => {} },
    net: {},
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

function quietHost() {
  const calls: unknown[] = [];
  let closed = false;
  const host: Host = {
    call: async (method, body) => {
      calls.push([method, body]);
      return { ok: true, value: "done" };
    },
    on: () => () => {},
    add: () => "route-1",
    close: () => {
      closed = true;
    },
  };
  return { host, calls, closed: () => closed };
}

const options = { windowFolder: resolve("window"), preload: "bridge.cjs" };

test("our pages get a scheme of their own before the program is ready", () => {
  const { electron, noted } = standIn();
  registerScheme(electron);
  expect(noted.schemes).toEqual([
    { scheme: "strandwright", privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
});

test("the window opens on our own page, refuses permissions and opens nothing else", async () => {
  const { electron, noted, listeners } = standIn();
  await openDesktop(electron, { host: quietHost().host, ...options });
  expect(noted.loaded).toBe("strandwright://window/index.html");
  expect(noted.shown).toBe(true);
  expect(noted.permission).toBe(false);
  expect(noted.openedOutside).toEqual({ action: "deny" });
  const leave = { url: "https://example.org", preventDefault: () => (noted.prevented = true) };
  listeners.get("page will-navigate")?.(leave);
  expect(noted.prevented).toBe(true);
});

test("a call from a page that is not ours is refused and never reaches the host", async () => {
  const { electron, handlers } = standIn();
  const { host, calls } = quietHost();
  await openDesktop(electron, { host, ...options });
  const call = handlers.get("call");
  expect(await call?.({ senderFrame: { url: "https://example.org" } }, "route.list", {})).toMatchObject({ ok: false });
  expect(calls).toEqual([]);
  expect(await call?.({ senderFrame: { url: "strandwright://window/index.html" } }, "route.list", {})).toEqual({
    ok: true,
    value: "done",
  });
  expect(calls).toEqual([["route.list", {}]]);
});

test("closing the last window closes the route and quits", async () => {
  const { electron, noted, listeners } = standIn();
  const { host, closed } = quietHost();
  await openDesktop(electron, { host, ...options });
  listeners.get("app window-all-closed")?.(null);
  expect(closed()).toBe(true);
  expect(noted.quit).toBe(true);
});

test("a page address never leads out of the window's folder", () => {
  const folder = resolve("window");
  expect(pageFile(folder, "strandwright://window/index.html")).toBe(resolve(folder, "index.html"));
  expect(pageFile(folder, "strandwright://window/")).toBe(resolve(folder, "index.html"));
  expect(pageFile(folder, "strandwright://window/%2e%2e%2fsecret")).toBeNull();
});

import { join, normalize, sep } from "node:path";
import { pathToFileURL } from "node:url";
import type { HostEvent } from "../../core/contract/contract.ts";
import { fail } from "../../core/model/result.ts";
import type { Host } from "../host/host.ts";
import { mayNavigate, ownOrigin, ownScheme, trustedSender, windowOptions } from "./windowOptions.ts";

/** The few parts of Electron the program uses; a test hands in a stand-in. */
export type ElectronParts = Pick<
  typeof import("electron"),
  "app" | "BrowserWindow" | "ipcMain" | "protocol" | "net" | "session"
>;

export type DesktopOptions = { readonly host: Host; readonly windowFolder: string; readonly preload: string };

/** Must run before the app is ready: our pages get a scheme of their own, as strict as https. */
export function registerScheme({ protocol }: Pick<ElectronParts, "protocol">): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: ownScheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

/** File a page address stands for, or null where it leaves the window's folder. */
export function pageFile(windowFolder: string, address: string): string | null {
  const { pathname } = new URL(address);
  const path = normalize(join(windowFolder, pathname === "/" ? "index.html" : decodeURIComponent(pathname)));
  return path.startsWith(windowFolder + sep) ? path : null;
}

/** Opens the window over the host and closes both together. */
export async function openDesktop(
  electron: ElectronParts,
  { host, windowFolder, preload }: DesktopOptions,
): Promise<void> {
  const { app, BrowserWindow, ipcMain, protocol, net, session } = electron;
  await app.whenReady();
  session.defaultSession.setPermissionRequestHandler((_page, _permission, decide) => decide(false));
  protocol.handle(ownScheme, (request) => {
    const path = pageFile(windowFolder, request.url);
    return path === null ? new Response("Not here.", { status: 404 }) : net.fetch(pathToFileURL(path).href);
  });
  ipcMain.handle("call", (event, method: unknown, body: unknown) =>
    trustedSender(event.senderFrame) && typeof method === "string"
      ? host.call(method, body)
      : fail("not-trusted", "That page may not call the program.", "window", "Use the program's own window."),
  );
  const window = new BrowserWindow(windowOptions(preload));
  window.webContents.setWindowOpenHandler(() => ({ action: "deny" }));
  window.webContents.on("will-navigate", (event) => {
    if (!mayNavigate(event.url)) event.preventDefault();
  });
  const silence = host.on((event: HostEvent) => window.webContents.send("event", event));
  window.once("ready-to-show", () => window.show());
  window.on("closed", silence);
  app.on("window-all-closed", () => {
    host.close();
    app.quit();
  });
  await window.loadURL(`${ownOrigin}/index.html`);
}

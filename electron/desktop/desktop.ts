import { join, normalize, sep } from "node:path";
import { pathToFileURL } from "node:url";
import type { HostEvent } from "../../core/contract/contract.ts";
import { drawnSet, menuActions } from "../../core/contract/desktopShapes.ts";
import { type Fault, fail, type Result } from "../../core/model/result.ts";
import { readDressedPage } from "../host/dressedPage.ts";
import type { Host } from "../host/host.ts";
import { applicationMenu } from "./applicationMenu.ts";
import { routeFiles } from "./routeFiles.ts";
import { showDrawn } from "./showDrawn.ts";
import { mayNavigate, ownOrigin, ownScheme, trustedSender, windowOptions } from "./windowOptions.ts";
import { openWindows, type WindowParts } from "./windows.ts";

/** The few parts of Electron the program uses; a test hands in a stand-in. */
export type ElectronParts = WindowParts &
  Pick<typeof import("electron"), "app" | "dialog" | "ipcMain" | "Menu" | "net" | "protocol" | "session" | "shell">;

export type DesktopOptions = {
  readonly host: Host;
  readonly windowFolder: string;
  readonly preload: string;
  /** Where the window's place is kept. */
  readonly configFolder: string;
  /** Opens a route file in the host, or finds it open; answers with its id there. */
  readonly openFile: (path: string) => Result<string>;
  /** Route files named at the start; without one the window shows what the host has open. */
  readonly paths: readonly string[];
};

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

/** Opens the windows over the host, one a route, and closes all together. */
export async function openDesktop(electron: ElectronParts, options: DesktopOptions): Promise<void> {
  const { app, protocol, net, session } = electron;
  const { host, windowFolder, preload, configFolder } = options;
  await app.whenReady();
  session.defaultSession.setPermissionRequestHandler((_page, _permission, decide) => decide(false));
  protocol.handle(ownScheme, async (request) => {
    const path = pageFile(windowFolder, request.url);
    if (path === null) return new Response("Not here.", { status: 404 });
    if (!path.endsWith(".html")) return net.fetch(pathToFileURL(path).href);
    const headers = { "content-type": "text/html; charset=utf-8" };
    return new Response(await readDressedPage(path, host.call), { headers });
  });
  const windows = openWindows(electron, {
    make: windowOptions(preload),
    configFolder,
    mayNavigate,
    address: (routeId) => `${ownOrigin}/index.html${routeId === null ? "" : `?route=${encodeURIComponent(routeId)}`}`,
    listen: (tell: (event: HostEvent) => void) => host.on(tell),
  });
  const openPaths = async (paths: readonly string[]): Promise<void> => {
    for (const path of paths) {
      const opened = options.openFile(path);
      if (!opened.ok) showFault(electron, opened.fault);
      else {
        app.addRecentDocument(path);
        await windows.show(opened.value);
      }
    }
  };
  answerPages(electron, host, windows.send, openPaths);
  app.on("second-instance", (_event, words, folder) => {
    windows.raise();
    void openPaths(routeFiles(words, folder));
  });
  app.on("open-file", (event, path) => {
    event.preventDefault();
    void openPaths([path]);
  });
  app.on("window-all-closed", () => app.quit());
  await openPaths(options.paths);
  if (windows.count() === 0) await windows.show(null);
}

function showFault({ dialog }: Pick<ElectronParts, "dialog">, fault: Fault): void {
  dialog.showErrorBox(fault.what, `${fault.where}\n\n${fault.mend}`);
}

/** Answers calls, menus and drawn sets of our own pages; on quitting waits for the calls under way, so that no answer is lost. */
function answerPages(
  { app, dialog, ipcMain, Menu, shell }: ElectronParts,
  host: Host,
  send: (channel: string, word: unknown) => void,
  openPaths: (paths: readonly string[]) => Promise<void>,
): void {
  const underWay = new Set<Promise<unknown>>();
  let isClosed = false;
  ipcMain.handle("call", (event, method: unknown, body: unknown) => {
    if (!trustedSender(event.senderFrame) || typeof method !== "string")
      return fail("not-trusted", "That page may not call the program.", "window", "Use the program's own window.");
    const answer = host.call(method, body);
    underWay.add(answer);
    return answer.finally(() => underWay.delete(answer));
  });
  ipcMain.handle("show-drawn", async (event, word: unknown) => {
    const drawn = drawnSet.safeParse(word);
    if (trustedSender(event.senderFrame) && drawn.success) await showDrawn(shell, app.getPath("temp"), drawn.data);
  });
  const openChosen = async (): Promise<void> => {
    const filters = [{ name: "Route files", extensions: ["strand"] }];
    const { filePaths } = await dialog.showOpenDialog({ properties: ["openFile", "multiSelections"], filters });
    await openPaths(filePaths);
  };
  ipcMain.on("open-dropped", (event, path: unknown) => {
    if (trustedSender(event.senderFrame) && typeof path === "string") void openPaths(routeFiles([path], "/"));
  });
  ipcMain.on("actions", (event, word: unknown) => {
    const actions = menuActions.safeParse(word);
    if (!trustedSender(event.senderFrame) || !actions.success) return;
    const deeds = {
      perform: (id: string) => send("perform", id),
      openFile: () => void openChosen(),
      isMac: process.platform === "darwin",
    };
    Menu.setApplicationMenu(Menu.buildFromTemplate(applicationMenu(actions.data, deeds)));
  });
  app.on("before-quit", (event) => {
    if (isClosed) return;
    event.preventDefault();
    void Promise.allSettled(underWay).then(() => {
      isClosed = true;
      host.close();
      app.quit();
    });
  });
}

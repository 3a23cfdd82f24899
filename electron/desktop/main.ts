import { join } from "node:path";
import { app, BrowserWindow, dialog, ipcMain, Menu, net, protocol, screen, session, shell } from "electron";
import { openHost } from "../host/host.ts";
import { openOrLook } from "../host/openRoute.ts";
import { filePlaces, places, stampNow } from "../host/places.ts";
import { openRecentRoutes } from "../host/recentRoutes.ts";
import { jobsInThread } from "../host/thread.ts";
import { openDesktop, registerScheme } from "./desktop.ts";
import { openOnce } from "./openOnce.ts";
import { routeFiles } from "./routeFiles.ts";

const electron = { app, BrowserWindow, dialog, ipcMain, Menu, net, protocol, screen, session, shell };
const { windowFolder, nativeFolder: builtFolder, root } = places(import.meta.url);
const nativeFolder = app.isPackaged ? join(process.resourcesPath, "native") : builtFolder;

registerScheme(electron);
// a second start hands its files to the first and ends
if (app.requestSingleInstanceLock()) {
  const files = filePlaces(root, nativeFolder);
  const named = routeFiles(process.argv, process.cwd());
  const host = openHost({
    runJob: jobsInThread(new URL("./worker.mjs", import.meta.url)),
    report: (error) => console.error(error),
    files,
  });
  await openDesktop(electron, {
    host,
    windowFolder,
    preload: join(root, ".build", "app", "preload.cjs"),
    configFolder: files.configFolder,
    openFile: openOnce((path) => openOrLook(path, stampNow(), nativeFolder), host.add),
    // a plain start shows what was open last
    paths: named.length > 0 ? named : openRecentRoutes(files.configFolder).paths().slice(0, 1),
  });
} else {
  app.quit();
}

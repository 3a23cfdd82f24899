import { join } from "node:path";
import { app, BrowserWindow, dialog, ipcMain, net, protocol, session } from "electron";
import { openHost } from "../host/host.ts";
import { openRoute } from "../host/openRoute.ts";
import { places, stampNow } from "../host/places.ts";
import { jobsInThread } from "../host/thread.ts";
import { openDesktop, registerScheme } from "./desktop.ts";

const electron = { app, BrowserWindow, ipcMain, net, protocol, session };
const { windowFolder, nativeFolder, root } = places(import.meta.url);
const path = process.argv.at(-1) ?? "";

registerScheme(electron);
const opened = openRoute(path, stampNow(), nativeFolder);
if (opened.ok) {
  const host = openHost({
    runJob: jobsInThread(new URL("./worker.mjs", import.meta.url)),
    report: (error) => console.error(error),
  });
  host.add(opened.value);
  await openDesktop(electron, { host, windowFolder, preload: join(root, ".build", "app", "preload.cjs") });
} else {
  await app.whenReady();
  dialog.showErrorBox(opened.fault.what, `${opened.fault.where}\n\n${opened.fault.mend}`);
  app.exit(2);
}

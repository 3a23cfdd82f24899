import { spawn } from "node:child_process";
import { existsSync, mkdirSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { parseArgs } from "node:util";
import type { Fault, Result } from "../../core/model/result.ts";
import { drawPdf } from "../host/drawPdf.ts";
import { electronBinary } from "../host/electronBinary.ts";
import { faultLines, programFault } from "../host/faultLines.ts";
import { openHost } from "../host/host.ts";
import { keptPort } from "../host/keptPort.ts";
import { makeDemoRoute } from "../host/makeDemoRoute.ts";
import { isMisread, misreadWords } from "../host/misread.ts";
import { openOrLook } from "../host/openRoute.ts";
import { filePlaces, folderOfCaller, places, stampNow } from "../host/places.ts";
import { openRecentRoutes } from "../host/recentRoutes.ts";
import type { Session } from "../host/session.ts";
import { summaryLines, summaryOf } from "../host/summary.ts";
import { jobsInThread } from "../host/thread.ts";
import { findBrowser, hasDisplay, openAppWindow } from "./openBrowser.ts";
import { openLoopback } from "./server.ts";

const { root, assetsFolder, windowFolder, nativeFolder } = places(import.meta.url);
const runJob = jobsInThread(new URL("./worker.mjs", import.meta.url));
const stamp = stampNow();

/** Opens the named route, or the demo route, which is made the first time. */
async function openOrMake(named: string | undefined): Promise<Result<Session>> {
  if (named !== undefined) return openOrLook(resolve(named), stamp);
  const path = join(root, "routes", "marrow-bend.strand");
  if (existsSync(path)) return openOrLook(path, stamp);
  mkdirSync(dirname(path), { recursive: true });
  console.log("Making the demo route from its pole, address, attachment and crossing lists.");
  return makeDemoRoute(path, assetsFolder, stamp, runJob);
}

/** Opens what was open last, where that is a route of the person's own; null where there is none or it cannot be opened. */
function openLast(): Session | null {
  const { configFolder, demoPath } = filePlaces(root);
  const [path] = openRecentRoutes(configFolder).paths();
  if (path === undefined || path === demoPath) return null;
  const opened = openOrLook(path, stamp);
  if (opened.ok) return opened.value;
  tell(opened.fault);
  return null;
}

/** Shows the window: Electron where its binary is here, else a browser's app window, else the address to open. */
async function showWindow(session: Session): Promise<void> {
  const electron = hasDisplay(process.env) ? electronBinary(root, nativeFolder) : null;
  if (electron !== null) {
    session.close();
    const child = spawn(electron, [join(root, ".build", "app", "desktop.mjs"), session.path], { stdio: "inherit" });
    await new Promise((done) => child.once("exit", done));
    return;
  }
  const files = filePlaces(root);
  const host = openHost({ runJob, report: (error) => console.error(error), files });
  host.add(session);
  const port = keptPort(files.configFolder);
  const loopback = await openLoopback(host, windowFolder, port.read());
  port.write(loopback.port);
  const stopped = new Promise<void>((done) => {
    process.once("SIGINT", done);
    process.once("SIGTERM", done);
  });
  const browser = hasDisplay(process.env) ? findBrowser(process.env) : null;
  if (browser === null) {
    console.log(
      `No window can be opened from here. Open this address in a browser; Ctrl+C ends the program:\n  ${loopback.url}`,
    );
    await stopped;
  } else {
    const window = openAppWindow(browser, loopback.url, join(root, ".build", "browser-profile"));
    const ended = new Promise<void>((done) => window.once("exit", () => done()));
    console.log(`The window is open; closing it ends the program. Its address, should you need it:\n  ${loopback.url}`);
    await Promise.race([ended, stopped, loopback.lastWindowGone]);
    window.kill();
  }
  await loopback.close();
  host.close();
}

async function start(named: string | undefined, endsAfterFiles: boolean): Promise<number> {
  const last = named === undefined && !endsAfterFiles ? openLast() : null;
  if (last) {
    console.log(`Route file, as it was open last: ${last.path}`);
    await showWindow(last);
    return 0;
  }
  const opened = await openOrMake(named);
  if (!opened.ok) return tell(opened.fault);
  const session = opened.value;
  const drawn = await drawPdf(session, runJob, { only: null, paper: null, letter: null }, null);
  if (!drawn.ok) {
    session.close();
    return tell(drawn.fault);
  }
  console.log(summaryLines(summaryOf(session)).join("\n"));
  console.log(`Route file: ${session.path}\nDrawing set: ${drawn.value.path} (${drawn.value.sheetCount} sheets)`);
  if (endsAfterFiles) session.close();
  else await showWindow(session);
  return 0;
}

function tell(fault: Fault): number {
  console.error(faultLines(fault).join("\n"));
  return 2;
}

async function main(): Promise<number> {
  const options = { batch: { type: "boolean", default: false } } as const;
  const where = "npm start";
  try {
    const { values, positionals } = parseArgs({ allowPositionals: true, options });
    if (positionals.length <= 1) return await start(positionals[0], values.batch);
    const mend = "Put a path with spaces in quotes: npm start -- FILE.strand [--batch]";
    return tell({ code: "bad-arguments", what: "One route file is opened at a time.", where, mend });
  } catch (error) {
    if (!isMisread(error)) return tell(programFault(error, where));
    const mend = "Write: npm start -- [FILE.strand] [--batch]";
    return tell({ code: "bad-arguments", what: misreadWords(error), where, mend });
  }
}

process.chdir(folderOfCaller(process.env, "start"));
process.exitCode = await main();

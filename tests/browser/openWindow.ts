import { copyFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { expect } from "vitest";
import type { Route } from "../../core/model/route.ts";
import { createRouteFile } from "../../db/createRouteFile.ts";
import { openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { makeDemoRoute } from "../../electron/host/makeDemoRoute.ts";
import { createRoute, openRoute } from "../../electron/host/openRoute.ts";
import type { Session, Stamp } from "../../electron/host/session.ts";
import { jobsInThread } from "../../electron/host/thread.ts";
import { openLoopback } from "../../electron/loopback/server.ts";
import { scale } from "./diagram.ts";

const root = resolve(import.meta.dirname, "../..");
const stamp: Stamp = { author: "tester", nowIso: () => "2026-03-02T08:00:00.000Z" };

/** A page on a route of its own, through the real host and the real loopback server. */
export type OpenWindow = {
  readonly page: Page;
  /** The route as the host holds it. */
  readonly session: Session;
  /** Everything the page complained of: console errors and warnings, thrown errors. */
  readonly complaints: readonly string[];
  /** Every address the page asked for. */
  readonly requests: readonly string[];
  readonly close: () => Promise<void>;
};

/** The demo route, made once, and a window on a copy of it for each test. */
export type Demo = {
  readonly open: (browser: Browser, options?: BrowserContextOptions) => Promise<OpenWindow>;
  /** A window on a route without a pole. */
  readonly openEmpty: (browser: Browser) => Promise<OpenWindow>;
  /** A window on a file of these rows. */
  readonly openRows: (browser: Browser, route: Route) => Promise<OpenWindow>;
  readonly remove: () => void;
};

/** Makes the demo route in a folder of its own. */
export async function makeDemo(): Promise<Demo> {
  const folder = mkdtempSync(join(tmpdir(), "strandwright-window-"));
  const original = join(folder, "original.strand");
  const made = await makeDemoRoute(original, join(root, "assets"), stamp, runJobHere);
  if (!made.ok) throw new Error(`the demo route cannot be made: ${made.fault.what} ${made.fault.where}`);
  made.value.close();
  let copyCount = 0;
  const nextPath = (): string => {
    copyCount += 1;
    return join(folder, `route-${copyCount}.strand`);
  };
  return {
    async open(browser, options = {}) {
      const path = nextPath();
      copyFileSync(original, path);
      const session = openRoute(path, stamp);
      if (!session.ok) throw new Error(session.fault.what);
      return openWindow(browser, session.value, options);
    },
    async openEmpty(browser) {
      const session = createRoute(nextPath(), join(root, "assets"), { routeName: "Empty route" }, stamp);
      if (!session.ok) throw new Error(session.fault.what);
      return openWindow(browser, session.value, {});
    },
    async openRows(browser, route) {
      const path = nextPath();
      const made = createRouteFile(path, route, { author: stamp.author, atIso: stamp.nowIso() });
      if (!made.ok) throw new Error(made.fault.what);
      made.value.close();
      const session = openRoute(path, stamp);
      if (!session.ok) throw new Error(session.fault.what);
      return openWindow(browser, session.value, {});
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

async function openWindow(browser: Browser, session: Session, options: BrowserContextOptions): Promise<OpenWindow> {
  const worker = new URL("../../.build/app/worker.mjs", import.meta.url);
  const complaints: string[] = [];
  const requests: string[] = [];
  const host = openHost({ runJob: jobsInThread(worker), report: (error) => complaints.push(`host: ${String(error)}`) });
  host.add(session);
  const loopback = await openLoopback(host, process.env.BUILT_WINDOW ?? join(root, ".build", "renderer"));
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    reducedMotion: "reduce",
    acceptDownloads: true,
    ...options,
  });
  context.setDefaultTimeout(60_000);
  const page = await context.newPage();
  await slowDown(page);
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => requests.push(request.url()));
  await page.goto(`${loopback.url}&view-handle`);
  await page.locator("canvas").first().waitFor();
  await expect.poll(() => scale(page)).toBeGreaterThan(0);
  await page.evaluate(() => document.fonts.ready);
  return {
    page,
    session,
    complaints,
    requests,
    async close() {
      await context.close();
      await loopback.close();
      host.close();
    },
  };
}

/** `BROWSER_SLOWDOWN=6` makes the page's processor six times slower, to find what only works on a quick machine. */
export async function slowDown(page: Page): Promise<void> {
  const rate = Number(process.env.BROWSER_SLOWDOWN ?? 1);
  if (rate === 1) return;
  const devtools = await page.context().newCDPSession(page);
  await devtools.send("Emulation.setCPUThrottlingRate", { rate });
}

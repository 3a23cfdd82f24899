import { mkdtempSync, rmSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import type { Route } from "../../core/model/route.ts";
import type { Attachment, Span } from "../../core/model/tables.ts";
import { createRouteFile } from "../../db/createRouteFile.ts";
import { openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { openRoute } from "../../electron/host/openRoute.ts";
import { openLoopback } from "../../electron/loopback/server.ts";
import { launchChromium } from "../browser/chromium.ts";
import { longRoute, onOneCable } from "./longRoute.ts";
import { type Figures, rounded } from "./measure.ts";

const root = process.cwd();
const displayFrameMs = 1000 / 60;
const usualCounts = [500, 2_000, 10_000, 50_000];
const stepCount = 40;
const stamp = { author: "bench", nowIso: () => "2026-01-01T00:00:00.000Z" };

/** Figures of the window on a route of so many poles. */
function benchWindow(browser: Browser, poleCount: number): Promise<Figures> {
  return onPage(browser, longRoute(join(root, "assets"), poleCount), async (page, route, firstPaintMs) => ({
    firstPaintMs,
    ...(await moves(page)),
    ...(await balance(page)),
    ...(await edits(page, [...route.span.values()])),
    ...(await profileDrag(page, [...route.attachment.values()])),
    ...(await memory(page, poleCount)),
  }));
}

/** Figures of the profile of one cable along so many poles, all of it in sight. */
function benchProfile(browser: Browser, poleCount: number): Promise<Figures> {
  const route = onOneCable(longRoute(join(root, "assets"), poleCount));
  return onPage(browser, route, (page) => profileDrag(page, [...route.attachment.values()]));
}

/** Opens a page on a route and works on it. */
async function onPage(
  browser: Browser,
  route: Route,
  work: (page: Page, route: Route, firstPaintMs: number) => Promise<Figures>,
): Promise<Figures> {
  const folder = mkdtempSync(join(tmpdir(), "strand-window-"));
  const path = join(folder, "long.strand");
  const made = createRouteFile(path, route, { author: stamp.author, atIso: stamp.nowIso() });
  if (!made.ok) throw new Error(made.fault.what);
  made.value.close();
  const session = openRoute(path, stamp);
  if (!session.ok) throw new Error(session.fault.what);
  const host = openHost({ runJob: runJobHere, report: console.error });
  host.add(session.value);
  const loopback = await openLoopback(host, join(root, ".build", "renderer"));
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, reducedMotion: "reduce" });
  try {
    const page = await context.newPage();
    page.setDefaultTimeout(300_000);
    const startMs = performance.now();
    await page.goto(`${loopback.url}&view-handle`);
    await page.waitForFunction(() => (window.__view?.scale() ?? 0) > 0);
    return await work(page, session.value.route(), performance.now() - startMs);
  } finally {
    await context.close();
    await loopback.close();
    host.close();
    rmSync(folder, { recursive: true });
  }
}

/** Frames while the whole route pans, zooms in and pans close by, against an empty canvas drawn in the same page. */
async function moves(page: Page): Promise<Figures> {
  // the page is still at opening until frames come evenly
  const emptyMs = await page.evaluate(emptyFrameMs, stepCount);
  await page.evaluate(watchLongTasks);
  const pan = async (): Promise<number> => {
    await page.mouse.move(300, 300);
    await page.mouse.down({ button: "middle" });
    await page.evaluate(() => window.__view?.frameStats());
    for (let step = 0; step < stepCount; step += 1) await page.mouse.move(300 + step * 4, 300 + (step % 7) * 3);
    await page.mouse.up({ button: "middle" });
    return page.evaluate(() => window.__view?.frameStats().medianMs ?? 0);
  };
  const wholePanMs = await pan();
  await page.mouse.move(500, 300);
  for (let step = 0; step < stepCount; step += 1) await page.mouse.wheel(0, -60);
  const zoomMs = await page.evaluate(() => window.__view?.frameStats().medianMs ?? 0);
  const closePanMs = await pan();
  const longestTaskMs = await longestTask(page);
  const slowestMs = Math.max(wholePanMs, zoomMs, closePanMs);
  return {
    emptyFrameMs: emptyMs,
    wholePanFrames: wholePanMs / displayFrameMs,
    zoomFrames: zoomMs / displayFrameMs,
    closePanFrames: closePanMs / displayFrameMs,
    slowestOverEmpty: slowestMs / emptyMs,
    longestTaskMs,
  };
}

/** From asking for the balance, the light of the whole route and evening it out to the answer, and the longest the page was held. */
async function balance(page: Page): Promise<Figures> {
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("0");
  const opened = await timed(page, async () => {
    await page.keyboard.press("Control+u");
    await page.locator(".ports-grid .port-cell").first().waitFor();
  });
  const light = await timed(page, async () => {
    await page.getByRole("tab", { name: "Light by terminal" }).click();
    await page.locator(".light-list:not([aria-busy=true])").waitFor();
  });
  const evened = await timed(page, async () => {
    await page.getByRole("button", { name: "Even out" }).click();
    await page.locator(".balance-foot output:not(:empty):not([aria-busy=true])").waitFor();
  });
  await page.locator(".balance-bar").getByRole("button", { name: "Put the balance away" }).click();
  return {
    balanceToShownMs: opened.ms,
    longestTaskOfBalanceMs: opened.longestTaskMs,
    lightToReckonedMs: light.ms,
    longestTaskOfLightMs: light.longestTaskMs,
    evenToToldMs: evened.ms,
    longestTaskOfEvenMs: evened.longestTaskMs,
  };
}

/** From asking for an edit to the frame after its answer, which brings rows and findings rechecked. */
async function edits(page: Page, spans: readonly Span[]): Promise<Figures> {
  const diagram = page.locator("[data-diagram]");
  await diagram.focus();
  const span = spans[Math.floor(spans.length / 2)];
  if (!span) throw new Error("the long route has no span");
  const point = await closeTo(page, span.id);
  await page.keyboard.press("t");
  const hangMs = await timed(page, async () => {
    await page.mouse.click(point.x, point.y);
    await page.getByRole("button", { name: /^Undo hang terminal/ }).waitFor();
  });
  await page.keyboard.press("Escape");
  const pole = await closeTo(page, span.fromPoleId);
  await page.mouse.click(pole.x, pole.y);
  await page.waitForFunction((id) => window.__view?.selection().some((ref) => ref.endsWith(id)), span.fromPoleId);
  const poleMs = await timed(page, async () => {
    await page.mouse.down();
    await page.mouse.move(pole.x + 20, pole.y + 12, { steps: 4 });
    await page.mouse.up();
    await page.getByRole("button", { name: /^Undo move pole/ }).waitFor();
  });
  const unitsMs = await timed(page, async () => {
    await page.getByRole("button", { name: "Switch to metric units" }).click();
    await page.getByRole("button", { name: "Switch to feet and inches" }).waitFor();
  });
  return {
    hangToRepaintedMs: hangMs.ms,
    longestTaskOfHangMs: hangMs.longestTaskMs,
    poleToRepaintedMs: poleMs.ms,
    longestTaskOfPoleMs: poleMs.longestTaskMs,
    unitsToRepaintedMs: unitsMs.ms,
    longestTaskOfUnitsMs: unitsMs.longestTaskMs,
  };
}

/** Frames while an attachment is dragged in the profile of one cable, all its poles in sight, and while the whole of it is. */
async function profileDrag(page: Page, attachments: readonly Attachment[]): Promise<Figures> {
  await page.keyboard.press("Control+e");
  await page.locator("[data-profile] canvas").first().waitFor();
  const strands = attachments.filter((one) => one.kind === "ourStrand").map((one) => one.id);
  const from = await page.evaluate(
    (ids) =>
      ids.map((id) => window.__profile?.toScreen(`attachment/${id}`)).find((point) => point && point.x > 400) ?? null,
    strands,
  );
  if (!from) throw new Error("no strand of the long route is on the profile");
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.evaluate(() => window.__view?.frameStats());
  for (let step = 0; step < stepCount; step += 1) await page.mouse.move(from.x, from.y + 8 + (step % 9) * 4);
  const { medianMs, p95Ms } = await page.evaluate(() => window.__view?.frameStats() ?? { medianMs: 0, p95Ms: 0 });
  const isHeld = await page.locator("[data-card=held]").isVisible();
  await page.keyboard.press("Escape");
  await page.mouse.up();
  await page.mouse.down({ button: "middle" });
  await page.evaluate(() => window.__view?.frameStats());
  for (let step = 0; step < stepCount; step += 1) await page.mouse.move(from.x + step * 3, from.y + (step % 9) * 2);
  const panMs = await page.evaluate(() => window.__view?.frameStats().p95Ms ?? 0);
  await page.mouse.up({ button: "middle" });
  await page.keyboard.press("Control+e");
  if (!isHeld) throw new Error("the profile let the attachment go");
  return {
    profileDragFrames: medianMs / displayFrameMs,
    profileDragP95Frames: p95Ms / displayFrameMs,
    profilePanP95Frames: panMs / displayFrameMs,
  };
}

/** Shows a span or pole from close by; answers where it is on the page. */
async function closeTo(page: Page, id: string): Promise<{ readonly x: number; readonly y: number }> {
  const place = () => page.evaluate((one) => window.__view?.toScreen(one) ?? null, id);
  await page.keyboard.press("0");
  for (let turn = 0; turn < 24; turn += 1) {
    const point = await place();
    if (!point) throw new Error("what to come close to is not drawn");
    await page.mouse.move(point.x, point.y);
    await page.mouse.wheel(0, -200);
  }
  const point = await place();
  if (!point) throw new Error("what to come close to is not drawn");
  return point;
}

async function timed(page: Page, work: () => Promise<void>) {
  await longestTask(page);
  const startMs = performance.now();
  await work();
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => resolve(null))));
  const ms = performance.now() - startMs;
  return { ms, longestTaskMs: await longestTask(page) };
}

async function memory(page: Page, poleCount: number): Promise<Figures> {
  const client = await page.context().newCDPSession(page);
  await client.send("HeapProfiler.collectGarbage");
  const { usedSize } = await client.send("Runtime.getHeapUsage");
  return { heapKbPerPole: usedSize / 1024 / poleCount };
}

function watchLongTasks(): void {
  let longestMs = 0;
  const note = (entries: PerformanceEntryList): void => {
    longestMs = Math.max(longestMs, ...entries.map((entry) => entry.duration));
  };
  const observer = new PerformanceObserver((list) => note(list.getEntries()));
  observer.observe({ entryTypes: ["longtask"] });
  Reflect.set(window, "longestTask", () => {
    note(observer.takeRecords());
    const sinceMs = longestMs;
    longestMs = 0;
    return sinceMs;
  });
}

/** The longest the page was held since the last call, once its last task is known too; 0 where no task took 50 ms. */
async function longestTask(page: Page): Promise<number> {
  await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 100)));
  return Number(await page.evaluate(() => Reflect.get(window, "longestTask")()));
}

/** Median time between frames of a canvas of the window's size that is cleared and nothing more. */
async function emptyFrameMs(count: number): Promise<number> {
  const canvas = document.createElement("canvas");
  canvas.width = innerWidth;
  canvas.height = innerHeight;
  const context = canvas.getContext("2d");
  const gaps: number[] = [];
  let beforeMs = performance.now();
  for (let frame = 0; frame < count; frame += 1) {
    await new Promise((resolve) => requestAnimationFrame(resolve));
    context?.clearRect(0, 0, canvas.width, canvas.height);
    gaps.push(performance.now() - beforeMs);
    beforeMs = performance.now();
  }
  return gaps.sort((a, b) => a - b)[Math.floor(count / 2)] ?? 0;
}

const asked = process.argv.map(Number).filter((count) => count > 0);
const browser = await launchChromium();
console.log(
  `Node ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? "unknown"}, Chromium ${browser.version()}.`,
);
console.log("Frames are counted in display frames of 16.7 ms; medians of one run.");
for (const poleCount of asked.length > 0 ? asked : usualCounts) {
  console.log(`\n${poleCount} poles, ${poleCount * 3} living units`);
  for (const [name, value] of Object.entries(await benchWindow(browser, poleCount)))
    console.log(`  ${name.padEnd(24)} ${rounded(value)}`);
}
console.log("\n500 poles on one cable, its profile");
for (const [name, value] of Object.entries(await benchProfile(browser, 500)))
  console.log(`  ${name.padEnd(24)} ${rounded(value)}`);
await browser.close();

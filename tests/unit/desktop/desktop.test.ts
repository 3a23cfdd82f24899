import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, test } from "vitest";
import { fail, ok, type Result } from "../../../core/model/result.ts";
import { openDesktop, pageFile, registerScheme } from "../../../electron/desktop/desktop.ts";
import { optionsOn, ownPage, quietHost, standIn } from "./standIn.ts";

const strange = { senderFrame: { url: "https://example.org" } };

test("our pages get a scheme of their own before the program is ready", () => {
  const { electron, noted } = standIn();
  registerScheme(electron);
  expect(noted.schemes).toEqual([
    { scheme: "strandwright", privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
});

test("the window opens on our own page, refuses permissions and opens nothing else", async () => {
  const { electron, noted, listeners } = standIn();
  await openDesktop(electron, optionsOn(quietHost().host));
  expect(noted.loaded).toEqual(["strandwright://window/index.html"]);
  expect(noted.shownCount).toBe(1);
  expect(noted.permission).toBe(false);
  expect(noted.openedOutside).toEqual({ action: "deny" });
  let isPrevented = false;
  const preventDefault = () => {
    isPrevented = true;
  };
  listeners.get("page will-navigate")?.({ url: "https://example.org", preventDefault });
  expect(isPrevented).toBe(true);
});

test("a call from a page that is not ours is refused and never reaches the host", async () => {
  const { electron, handlers } = standIn();
  const { host, calls } = quietHost();
  await openDesktop(electron, optionsOn(host));
  const call = handlers.get("call");
  expect(await call?.(strange, "route.list", {})).toMatchObject({ ok: false });
  expect(calls).toEqual([]);
  expect(await call?.(ownPage, "route.list", {})).toEqual({ ok: true, value: "done" });
  expect(calls).toEqual([["route.list", {}]]);
});

test("two route files open in two windows; one named again comes to the front", async () => {
  const { electron, noted, listeners } = standIn();
  await openDesktop(electron, optionsOn(quietHost().host, ["/a.strand"]));
  listeners.get("app second-instance")?.(null, ["program", "--flag", "b.strand", "a.strand"], resolve("/"));
  await expect.poll(() => noted.loaded.length).toBe(2);
  expect(noted.loaded[1]).toContain("b.strand");
  await expect.poll(() => noted.focusCount).toBe(2);
  expect(noted.recent).toHaveLength(3);
});

test("a file opened from the desktop opens in the same window set, a bad one is told", async () => {
  const { electron, noted, listeners } = standIn();
  const options = optionsOn(quietHost().host, ["/a.strand"]);
  const openFile = (path: string): Result<string> =>
    path === "/bad.strand"
      ? fail("bad-file", "That is no route file.", path, "Choose another.")
      : options.openFile(path);
  await openDesktop(electron, { ...options, openFile });
  const open = (path: string) => listeners.get("app open-file")?.({ preventDefault: () => {} }, path);
  open("/c.strand");
  open("/bad.strand");
  await expect.poll(() => noted.loaded.length).toBe(2);
  expect(noted.errors).toEqual(["That is no route file."]);
});

test("quitting waits for the edit that is being written, then closes the routes", async () => {
  const { electron, noted, handlers, listeners } = standIn();
  const { host, state } = quietHost();
  await openDesktop(electron, optionsOn(host));
  const answer = handlers.get("call")?.(ownPage, "slow", {});
  let preventedCount = 0;
  const preventDefault = () => {
    preventedCount += 1;
  };
  const leave = { preventDefault };
  listeners.get("app before-quit")?.(leave);
  await new Promise((done) => setTimeout(done, 5));
  expect([preventedCount, state.isClosed, noted.quitCount]).toEqual([1, false, 0]);
  state.answer();
  expect(await answer).toEqual({ ok: true, value: "late" });
  await expect.poll(() => noted.quitCount).toBe(1);
  expect(state.isClosed).toBe(true);
  listeners.get("app before-quit")?.(leave);
  expect(preventedCount).toBe(1);
});

test("a page that died is loaded again, one that was closed is not", async () => {
  const { electron, noted, listeners } = standIn();
  await openDesktop(electron, optionsOn(quietHost().host));
  listeners.get("page render-process-gone")?.(null, { reason: "clean-exit" });
  expect(noted.reloadCount).toBe(0);
  listeners.get("page render-process-gone")?.(null, { reason: "crashed" });
  expect(noted.reloadCount).toBe(1);
});

test("closing a window keeps its place, closing the last one quits", async () => {
  const { electron, noted, listeners } = standIn();
  const options = optionsOn(quietHost().host);
  await openDesktop(electron, options);
  listeners.get("window close")?.(null);
  const kept: unknown = JSON.parse(readFileSync(resolve(options.configFolder, "window-place.json"), "utf8"));
  expect(kept).toEqual({ x: 40, y: 50, width: 1000, height: 700, isMaximized: false });
  listeners.get("app window-all-closed")?.(null);
  expect(noted.quitCount).toBe(1);
});

test("the menu is made from the page's own actions, and from no other page's", async () => {
  const { electron, noted, listeners } = standIn();
  await openDesktop(electron, optionsOn(quietHost().host));
  const actions = [{ id: "undo", name: "Undo", key: "Mod+Z", place: "history", isOff: false }];
  listeners.get("ipc actions")?.(strange, actions);
  listeners.get("ipc actions")?.(ownPage, [{ id: 7 }]);
  expect(noted.menus).toEqual([]);
  listeners.get("ipc actions")?.(ownPage, actions);
  expect(noted.menus).toHaveLength(1);
});

test("a dropped route file opens where it lies, anything else and any other page is passed over", async () => {
  const { electron, noted, listeners } = standIn();
  const opened: string[] = [];
  const openFile = (path: string): Result<string> => {
    opened.push(path);
    return ok("route-7");
  };
  await openDesktop(electron, { ...optionsOn(quietHost().host), openFile });
  const path = resolve("/jobs/elm.strand");
  listeners.get("ipc open-dropped")?.(strange, path);
  listeners.get("ipc open-dropped")?.(ownPage, "/jobs/poles.csv");
  listeners.get("ipc open-dropped")?.(ownPage, "");
  expect(opened).toEqual([]);
  listeners.get("ipc open-dropped")?.(ownPage, path);
  await expect.poll(() => noted.loaded.at(-1)).toBe("strandwright://window/index.html?route=route-7");
  expect(opened).toEqual([path]);
});

test("a drawing set is shown by the system's viewer, in its folder where there is none, and never outside ours", async () => {
  const { electron, noted, handlers } = standIn();
  await openDesktop(electron, optionsOn(quietHost().host));
  const pdfBase64 = Buffer.from("%PDF-1.7").toString("base64");
  await handlers.get("show-drawn")?.(ownPage, { fileName: "../../route.pdf", pdfBase64 });
  const [path = ""] = noted.opened;
  expect(path).toMatch(/strandwright-\w+[\\/]route\.pdf$/);
  expect(readFileSync(path, "utf8")).toBe("%PDF-1.7");
  expect(noted.shownInFolder).toEqual([]);
  noted.viewerTrouble = "no viewer";
  await handlers.get("show-drawn")?.(ownPage, { fileName: "route.pdf", pdfBase64 });
  expect(noted.shownInFolder).toHaveLength(1);
  await handlers.get("show-drawn")?.(strange, { fileName: "route.pdf", pdfBase64 });
  expect(noted.opened).toHaveLength(2);
});

test("a page address never leads out of the window's folder", () => {
  const folder = resolve("window");
  expect(pageFile(folder, "strandwright://window/index.html?route=route-2")).toBe(resolve(folder, "index.html"));
  expect(pageFile(folder, "strandwright://window/")).toBe(resolve(folder, "index.html"));
  expect(pageFile(folder, "strandwright://window/%2e%2e%2fsecret")).toBeNull();
});

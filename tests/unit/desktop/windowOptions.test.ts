import { expect, test } from "vitest";
import { mayNavigate, trustedSender, windowOptions } from "../../../electron/desktop/windowOptions.ts";

test("the window has no Node in its page, a world of its own and a sandbox", () => {
  expect(windowOptions("bridge.cjs").webPreferences).toEqual({
    preload: "bridge.cjs",
    contextIsolation: true,
    sandbox: true,
    nodeIntegration: false,
    webSecurity: true,
    spellcheck: false,
  });
});

test("the window stays inside its own pages", () => {
  expect(mayNavigate("strandwright://window/index.html")).toBe(true);
  expect(mayNavigate("strandwright://window.elsewhere/index.html")).toBe(false);
  expect(mayNavigate("https://example.org/")).toBe(false);
  expect(mayNavigate("file:///etc/hosts")).toBe(false);
});

test("calls are taken from our own pages only", () => {
  expect(trustedSender({ url: "strandwright://window/index.html" })).toBe(true);
  expect(trustedSender({ url: "http://127.0.0.1/" })).toBe(false);
  expect(trustedSender(null)).toBe(false);
});

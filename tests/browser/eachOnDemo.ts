import type { Browser, BrowserContextOptions } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect } from "vitest";
import type { Route } from "../../core/model/route.ts";
import { launchChromium } from "./chromium.ts";
import { type Demo, makeDemo, type OpenWindow } from "./openWindow.ts";

/** What a page may do with the clipboard, for the tests that read it or write to it. */
export const withClipboard: BrowserContextOptions = { permissions: ["clipboard-read", "clipboard-write"] };

/** The demo route in a browser, for the tests of one file. */
type OnDemo = {
  /** The window of the test that runs now, on a copy of the route of its own. */
  readonly opened: () => OpenWindow;
  readonly openEmpty: () => Promise<OpenWindow>;
  readonly openRows: (route: Route) => Promise<OpenWindow>;
};

/** Opens a window on the demo route before each test of a file and closes it after; no page may complain. */
export function eachOnDemo(
  prepare?: (opened: OpenWindow) => Promise<void>,
  context: BrowserContextOptions = {},
): OnDemo {
  let browser: Browser;
  let demo: Demo;
  let opened: OpenWindow;
  beforeAll(async () => {
    [browser, demo] = await Promise.all([launchChromium(), makeDemo()]);
  });
  afterAll(async () => {
    await browser.close();
    demo.remove();
  });
  beforeEach(async () => {
    opened = await demo.open(browser, context);
    await prepare?.(opened);
  });
  afterEach(async () => {
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });
  return {
    opened: () => opened,
    openEmpty: () => demo.openEmpty(browser),
    openRows: (route) => demo.openRows(browser, route),
  };
}

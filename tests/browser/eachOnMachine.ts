import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach } from "vitest";
import { launchChromium } from "./chromium.ts";
import { type Machine, makeMachines } from "./programs.ts";

/** A machine of its own for each test of a file, on which the program can be started and stopped. */
export function eachOnMachine(): { readonly machine: () => Machine } {
  let browser: Browser;
  let machines: Awaited<ReturnType<typeof makeMachines>>;
  let machine: Machine;
  beforeAll(async () => {
    [browser, machines] = await Promise.all([launchChromium(), makeMachines()]);
  });
  afterAll(async () => {
    await browser.close();
    machines.remove();
  });
  beforeEach(() => {
    machine = machines.setUp(browser);
  });
  afterEach(() => machine.close());
  return { machine: () => machine };
}

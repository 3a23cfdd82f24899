import { existsSync } from "node:fs";
import bundledChromium from "@sparticuz/chromium";
import { type Browser, chromium } from "playwright-core";

const systemPaths = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/usr/bin/microsoft-edge",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/** Flags for steady pictures: no graphics card, no calls home. */
const steadyFlags = ["--disable-gpu", "--no-sandbox", "--disable-background-networking"];

/** A headless Chromium for tests: the system's own, else the one inside an npm package. */
export async function launchChromium(): Promise<Browser> {
  const system = systemPaths.find((path) => existsSync(path));
  if (system) return chromium.launch({ executablePath: system, args: steadyFlags });
  // the package's own flags are for a cloud function: --single-process hangs from the second page on
  return chromium.launch({
    executablePath: await bundledChromium.executablePath(),
    args: [...steadyFlags, "--no-zygote"],
  });
}

import { type ChildProcess, spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const commandNames = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "microsoft-edge",
  "brave-browser",
];

const fixedPlaces: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>> = {
  darwin: [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ],
  win32: [
    "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
    "C:\\Program Files\\Microsoft\\Edge\\Application\\msedge.exe",
  ],
};

/** An installed browser of the Chromium family, or null. */
export function findBrowser(
  environment: NodeJS.ProcessEnv,
  exists: (path: string) => boolean = existsSync,
): string | null {
  const folders = (environment.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  const onPath = folders.flatMap((folder) => commandNames.map((name) => join(folder, name)));
  return [...onPath, ...(fixedPlaces[process.platform] ?? [])].find(exists) ?? null;
}

/** Whether a window can be shown at all. */
export function hasDisplay(environment: NodeJS.ProcessEnv, platform: NodeJS.Platform = process.platform): boolean {
  return platform !== "linux" || Boolean(environment.DISPLAY || environment.WAYLAND_DISPLAY);
}

/** Opens the window of the program in a browser of its own profile, so that its end can be noticed. */
export function openAppWindow(browser: string, url: string, profileFolder: string): ChildProcess {
  const asRoot = process.getuid?.() === 0 ? ["--no-sandbox"] : []; // Chromium refuses its sandbox to root
  return spawn(
    browser,
    [
      `--app=${url}`,
      `--user-data-dir=${profileFolder}`,
      "--no-first-run",
      "--disable-background-networking",
      "--window-size=1440,900",
      ...asRoot,
    ],
    { stdio: "ignore" },
  );
}

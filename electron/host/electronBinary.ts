import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Path of Electron's binary, or null where it was never fetched or its own copy of the database driver is missing.
 *
 * The package is not loaded to find out: loading it would start a download.
 *
 * @param nativeFolder  where the driver's Electron copy lies (electron/launch/electronNative.mjs makes it)
 */
export function electronBinary(root: string, nativeFolder: string): string | null {
  const folder = process.env.ELECTRON_OVERRIDE_DIST_PATH ?? join(root, "node_modules", "electron", "dist");
  const named = join(root, "node_modules", "electron", "path.txt");
  if (!existsSync(named) || !existsSync(nativeFolder)) return null;
  const hasDriver = readdirSync(nativeFolder).some((name) => name.startsWith("electron-"));
  const binary = join(folder, readFileSync(named, "utf8").trim());
  return hasDriver && existsSync(binary) ? binary : null;
}

import { existsSync, readdirSync } from "node:fs";
import { homedir, userInfo } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { FilePlaces } from "./fileHandlers.ts";
import type { Stamp } from "./session.ts";

/**
 * Where the program's own parts lie.
 *
 * @param bundleUrl  address of a bundled entry, two folders below the program's root
 */
export function places(bundleUrl: string) {
  const root = fileURLToPath(new URL("../..", bundleUrl));
  return {
    root,
    assetsFolder: join(root, "assets"),
    windowFolder: join(root, ".build", "renderer"),
    nativeFolder: join(root, ".build", "native"),
  };
}

/**
 * The folder a person stands in. npm runs a script in the program's folder and tells elsewhere where it was called from.
 *
 * @param script  name of the npm script this process may be
 */
export function folderOfCaller(environment: NodeJS.ProcessEnv, script: string): string {
  const { npm_lifecycle_event: running, INIT_CWD: calledFrom } = environment;
  return running === script && calledFrom ? calledFrom : process.cwd();
}

/** The person at this machine, and its clock. */
export function stampNow(): Stamp {
  return { author: userInfo().username, nowIso: () => new Date().toISOString() };
}

/**
 * Where route files may be found and what the program remembers is kept.
 *
 * @param root  the program's own folder, where the demo route lies
 */
export function filePlaces(root: string, nativeFolder?: string): FilePlaces {
  const home = homedir();
  const places = {
    configFolder: configFolderOf(process.platform, home),
    roots: [home, ...driveFolders(process.platform)],
    assetsFolder: join(root, "assets"),
    demoPath: join(root, "routes", "marrow-bend.strand"),
    stamp: stampNow(),
  };
  return nativeFolder === undefined ? places : { ...places, nativeFolder };
}

/** The person's folder for what programs remember, as each system has it. */
function configFolderOf(platform: NodeJS.Platform, home: string): string {
  if (platform === "win32") return join(home, "AppData", "Roaming", "Strandwright");
  if (platform === "darwin") return join(home, "Library", "Application Support", "Strandwright");
  return join(home, ".config", "strandwright");
}

function driveFolders(platform: NodeJS.Platform): string[] {
  if (platform === "win32")
    return [..."CDEFGHIJKLMNOPQRSTUVWXYZ"].map((letter) => `${letter}:\\`).filter((drive) => existsSync(drive));
  const above = platform === "darwin" ? ["/Volumes"] : ["/mnt", "/media", `/media/${userInfo().username}`];
  return above.flatMap(foldersIn);
}

function foldersIn(path: string): string[] {
  try {
    return readdirSync(path, { withFileTypes: true }).flatMap((one) =>
      one.isDirectory() ? [join(path, one.name)] : [],
    );
  } catch {
    return [];
  }
}

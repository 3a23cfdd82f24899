import { userInfo } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
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

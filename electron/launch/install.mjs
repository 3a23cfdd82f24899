import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

export const projectFolder = fileURLToPath(new URL("../..", import.meta.url));

/** Runs npm itself, whichever way it is installed, and answers with its exit code. */
function runNpm(args) {
  const cli = process.env.npm_execpath;
  const run = cli ? [process.execPath, [cli, ...args]] : ["npm", args];
  return spawnSync(run[0], run[1], {
    cwd: projectFolder,
    stdio: ["ignore", "inherit", "inherit"],
    shell: !cli && process.platform === "win32",
  });
}

/** Installs the packages of the lock file where they are missing or older than it. */
export function installWhatIsMissing() {
  const installed = join(projectFolder, "node_modules", ".package-lock.json");
  const lock = join(projectFolder, "package-lock.json");
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return;
  console.error("Installing packages; the first time takes a few minutes.");
  const { status } = runNpm(["ci", "--no-audit", "--no-fund"]);
  if (status !== 0) {
    console.error(
      "The packages could not be installed. Check the network to the npm registry, and that a C++ compiler is there for better-sqlite3, then run the command again.",
    );
    process.exit(1);
  }
}

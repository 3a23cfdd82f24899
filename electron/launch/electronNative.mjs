// Fetches Electron's binary and builds a copy of the database driver for it, apart from the one Node uses.
import { execFileSync, spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { installWhatIsMissing, projectFolder } from "./install.mjs";

installWhatIsMissing();
const modules = join(projectFolder, "node_modules");
const electronFolder = join(modules, "electron");

const fetched = spawnSync(process.execPath, [join(electronFolder, "install.js")], { stdio: "inherit" });
const named = join(electronFolder, "path.txt");
if (fetched.status !== 0 || !existsSync(named)) {
  console.error(
    "Electron's binary could not be fetched. The program works without it: npm start opens a browser window instead.",
  );
  process.exit(1);
}
const binary = join(electronFolder, "dist", readFileSync(named, "utf8").trim());
const abi = execFileSync(binary, ["-p", "process.versions.modules"], {
  env: { ...process.env, ELECTRON_RUN_AS_NODE: "1" },
})
  .toString()
  .trim();
const { version } = createRequire(import.meta.url)(join(electronFolder, "package.json"));

const work = join(projectFolder, ".build", "native-work");
rmSync(work, { recursive: true, force: true });
cpSync(join(modules, "better-sqlite3"), work, {
  recursive: true,
  filter: (path) => !path.endsWith(`better-sqlite3${"/"}build`),
});
const prebuilt = spawnSync(
  process.execPath,
  [join(modules, "prebuild-install", "bin.js"), "--runtime", "electron", "--target", version],
  { cwd: work, stdio: "inherit" },
);
const made = join(work, "build", "Release", "better_sqlite3.node");
if (prebuilt.status !== 0 || !existsSync(made)) {
  console.error(
    "The database driver for Electron could not be fetched. The program works without it: npm start opens a browser window instead.",
  );
  process.exit(1);
}
const target = join(projectFolder, ".build", "native", `electron-${abi}-${process.platform}-${process.arch}`);
mkdirSync(target, { recursive: true });
cpSync(made, join(target, "better_sqlite3.node"));
rmSync(work, { recursive: true, force: true });
console.log("Electron is ready; npm start opens its window.");

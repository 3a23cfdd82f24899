import { existsSync, mkdirSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { installWhatIsMissing, projectFolder } from "./install.mjs";

const outFolder = join(projectFolder, ".build");
const sources = ["core", "db", "electron", "renderer", "package-lock.json"];

/** Latest change below a folder, ms. */
function newestMs(path) {
  const entry = statSync(path);
  if (!entry.isDirectory()) return entry.mtimeMs;
  return readdirSync(path).reduce((newest, name) => Math.max(newest, newestMs(join(path, name))), entry.mtimeMs);
}

/** Bundles host, doors and window into .build, unless what is there is newer than every source. */
export async function buildWhatIsStale() {
  const stamp = join(outFolder, "stamp");
  const newest = Math.max(...sources.map((name) => newestMs(join(projectFolder, name))));
  if (existsSync(stamp) && statSync(stamp).mtimeMs > newest) return;
  const [{ build: bundle }, { build: buildWindow }] = await Promise.all([import("esbuild"), import("vite")]);
  const shared = {
    bundle: true,
    platform: "node",
    target: "node20",
    packages: "external",
    sourcemap: true,
    logLevel: "warning",
    absWorkingDir: projectFolder,
  };
  await bundle({
    ...shared,
    format: "esm",
    outdir: join(outFolder, "app"),
    outExtension: { ".js": ".mjs" },
    entryPoints: {
      batch: "electron/batch/main.ts",
      start: "electron/loopback/start.ts",
      desktop: "electron/desktop/main.ts",
      worker: "electron/host/worker.ts",
    },
  });
  await bundle({
    ...shared,
    format: "cjs",
    outfile: join(outFolder, "app", "preload.cjs"),
    entryPoints: ["electron/desktop/preload.ts"],
    external: ["electron"],
  });
  // one script and one style that the host writes into every packet's page; phones may be some years old
  await bundle({
    bundle: true,
    minify: true,
    format: "iife",
    platform: "browser",
    target: ["chrome100", "safari15", "firefox100"],
    charset: "utf8",
    logLevel: "warning",
    absWorkingDir: projectFolder,
    outfile: join(outFolder, "app", "packet.js"),
    entryPoints: ["renderer/packet/page.ts"],
  });
  await buildWindow({ configFile: join(projectFolder, "renderer", "vite.config.ts"), logLevel: "warn" });
  mkdirSync(outFolder, { recursive: true });
  writeFileSync(stamp, "");
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  installWhatIsMissing();
  await buildWhatIsStale();
}

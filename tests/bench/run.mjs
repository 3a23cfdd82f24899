import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { installWhatIsMissing, projectFolder } from "../../electron/launch/install.mjs";

installWhatIsMissing();
const { build } = await import("esbuild");
const outfile = join(projectFolder, ".build", "bench", "bench.mjs");
await build({
  absWorkingDir: projectFolder,
  entryPoints: ["tests/bench/bench.ts"],
  outfile,
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  packages: "external",
  logLevel: "warning",
});
await import(pathToFileURL(outfile).href);

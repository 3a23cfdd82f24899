import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { installWhatIsMissing, projectFolder } from "../../electron/launch/install.mjs";

installWhatIsMissing();
const { build } = await import("esbuild");
// `window` measures in a browser, `placement` on streets, `published FOLDER` on the sets in a folder; all else is the one bench
const name = ["window", "placement", "published"].find((one) => one === process.argv[2]) ?? "bench";
const outfile = join(projectFolder, ".build", "bench", `${name}.mjs`);
await build({
  absWorkingDir: projectFolder,
  entryPoints: [`tests/bench/${name}.ts`],
  outfile,
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  packages: "external",
  logLevel: "warning",
});
await import(pathToFileURL(outfile).href);

import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { installWhatIsMissing, projectFolder } from "../../electron/launch/install.mjs";

installWhatIsMissing();
const { build } = await import("esbuild");
/** Benches with a name of their own, each with the files it runs in other processes or threads; all else is the one bench. */
const named = {
  window: [],
  placement: [],
  published: [],
  growth: [],
  peers: ["peerSolver"],
  city: ["cityWorker"],
  mangled: [],
};
const name = Object.keys(named).find((one) => one === process.argv[2]) ?? "bench";
const outdir = join(projectFolder, ".build", "bench");
await build({
  absWorkingDir: projectFolder,
  entryPoints: [name, ...(named[name] ?? [])].map((one) => `tests/bench/${one}.ts`),
  outdir,
  outExtension: { ".js": ".mjs" },
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  packages: "external",
  logLevel: "warning",
});
await import(pathToFileURL(join(outdir, `${name}.mjs`)).href);

import { spawnSync } from "node:child_process";
import { installWhatIsMissing, projectFolder } from "../electron/launch/install.mjs";

installWhatIsMissing();

const bin = (name) => `node_modules/.bin/${name}${process.platform === "win32" ? ".cmd" : ""}`;

/** What a change must pass, in the order that fails soonest. `--check` stops after the seconds-long part. */
const checks = [
  ["types", bin("tsc"), ["-b"]],
  ["format and lint", bin("biome"), ["check", "--error-on-warnings", "."]],
  ["correctness lint", bin("oxlint"), ["--deny-warnings"]],
  ["unused code", bin("knip"), []],
];
const suites = [
  ["unit, standards, property and contract tests", bin("vitest"), ["run", "--config", "tests/vitest.config.ts"]],
  ["build", process.execPath, ["electron/launch/build.mjs"]],
  ["browser tests", bin("vitest"), ["run", "--config", "tests/browser/vitest.config.ts"]],
];

for (const [name, command, args] of process.argv.includes("--check") ? checks : [...checks, ...suites]) {
  console.log(`\n== ${name}`);
  const { status } = spawnSync(command, args, {
    cwd: projectFolder,
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (status !== 0) {
    console.error(`\nFailed: ${name}`);
    process.exit(status ?? 1);
  }
}

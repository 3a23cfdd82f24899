import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildSync } from "esbuild";
import { afterAll, expect, test } from "vitest";
import { createRouteFile } from "../../db/createRouteFile.ts";
import { history } from "../../db/history.ts";
import { openRouteFile } from "../../db/openRouteFile.ts";
import { faultCode, granted, opening, routeIn } from "../contract/db/scratch.ts";
import { smallRoute } from "../contract/db/smallRoute.ts";

const rounds = 5;
const polesPerEdit = 20;
// Within the project, so that the bundle finds its packages.
const editor = join(import.meta.dirname, `../../.build/tests/dbKillEditor-${process.pid}.mjs`);
const folder = mkdtempSync(join(tmpdir(), "killed-"));

afterAll(() => {
  rmSync(editor, { force: true });
  rmSync(folder, { recursive: true, force: true });
});

test("a program killed in the middle of its edits has lost none that it had answered, and left none half written", async () => {
  const entryPoints = [join(import.meta.dirname, "dbKillEditor.ts")];
  buildSync({ entryPoints, outfile: editor, bundle: true, platform: "node", format: "esm", packages: "external" });
  const path = join(folder, "storm.strand");
  granted(createRouteFile(path, smallRoute(), opening)).close();
  let firstEdit = 0;
  for (let round = 0; round < rounds; round++) {
    const answered = await editAndKill(path, firstEdit, 7 + 5 * round, 3 * round);
    const file = granted(openRouteFile(path, opening));
    const writtenCount = history(file.db, 1)[0]?.seq ?? 0;
    // The last edit may have been written without its answer getting through.
    expect([answered + 1, answered + 2]).toContain(writtenCount);
    expect(routeIn(file).pole.size).toBe(smallRoute().pole.size + writtenCount * polesPerEdit);
    file.close();
    firstEdit = writtenCount;
  }
});

/**
 * Runs the editor until it has answered some edits, waits a little and kills it.
 *
 * @returns number of the last edit it answered
 */
async function editAndKill(path: string, firstEdit: number, editCount: number, waitMs: number): Promise<number> {
  const child = spawn(process.execPath, [editor, path, String(firstEdit), String(polesPerEdit)], {
    stdio: ["ignore", "pipe", "inherit"],
    // Should this test fail half way, the editor must not go on by itself.
    timeout: 20_000,
    killSignal: "SIGKILL",
  });
  let told = "";
  child.stdout.setEncoding("utf8");
  for await (const part of child.stdout) {
    told += part;
    if (child.killed || told.split("\n").length <= editCount) continue;
    expect(faultCode(openRouteFile(path, opening))).toBe("locked");
    await new Promise((resume) => setTimeout(resume, waitMs));
    child.kill("SIGKILL");
  }
  if (child.exitCode === null && child.signalCode === null) await once(child, "exit");
  expect(child.signalCode).toBe("SIGKILL");
  return Number(told.trimEnd().split("\n").at(-1));
}

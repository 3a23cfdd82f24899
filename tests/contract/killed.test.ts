import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildSync } from "esbuild";
import { afterAll, expect, test } from "vitest";
import { answerSchema, contract } from "../../core/contract/contract.ts";
import { history } from "../../db/history.ts";
import { checkWhole } from "../../db/integrity.ts";
import { openRouteFile } from "../../db/openRouteFile.ts";
import { createRoute } from "../../electron/host/openRoute.ts";
import { granted, opening, routeIn } from "./db/scratch.ts";

const roundCount = 50;
const assetsFolder = join(import.meta.dirname, "../../assets");
// within the project, so that the bundle finds its packages
const program = join(import.meta.dirname, `../../.build/tests/killedHost-${process.pid}.mjs`);
const folder = mkdtempSync(join(tmpdir(), "killed-host-"));

afterAll(() => {
  rmSync(program, { force: true });
  rmSync(folder, { recursive: true, force: true });
});

type Door = { readonly child: ChildProcess; readonly call: (method: string, body: unknown) => Promise<unknown> };

test("a program killed fifty times in the middle of editing has lost no edit that it had answered, and opens without a question", {
  timeout: 400_000,
}, async () => {
  const entryPoints = [join(import.meta.dirname, "killedHost.ts")];
  buildSync({ entryPoints, outfile: program, bundle: true, platform: "node", format: "esm", packages: "external" });
  const path = join(folder, "storm.strand");
  const stamp = { author: "Field", nowIso: () => "2026-03-02T08:00:00.000Z" };
  granted(createRoute(path, assetsFolder, { routeName: "Storm" }, stamp)).close();
  let standing = 0;
  for (let round = 0; round < roundCount; round += 1) {
    const answered = await editUntilKilled(path, standing, 2 + (round % 4), (round * 7) % 23);
    expect(answered).toBeGreaterThan(standing);
    const file = granted(openRouteFile(path, opening));
    expect(checkWhole(file.db, path)).toEqual({ ok: true, value: null });
    standing = history(file.db, 1)[0]?.seq ?? 0;
    // the edit in hand may have been written without its answer getting through
    expect([answered, answered + 1]).toContain(standing);
    expect(routeIn(file).settings.get("settings")?.project).toBe(`Edit ${standing}`);
    file.close();
  }
});

/**
 * Starts the program, edits through its door without a pause, and kills it some time after a number of edits.
 *
 * @returns number of the last edit that was answered
 */
async function editUntilKilled(path: string, standing: number, editCount: number, waitMs: number): Promise<number> {
  const { child, call } = await openDoor(path);
  const gone = once(child, "exit");
  let answered = standing;
  try {
    for (;;) {
      const project = `Edit ${answered + 1}`;
      const body = { routeId: "route-1", commandId: "settings.set", input: { values: { project } } };
      const reply = answerSchema.parse(await call("edit.run", body));
      if (!reply.ok) throw new Error(`the edit was refused: ${reply.fault.what}`);
      contract["edit.run"].reply.parse(reply.value);
      answered += 1;
      if (answered - standing === editCount) setTimeout(() => child.kill("SIGKILL"), waitMs);
    }
  } catch (error) {
    // a call that breaks off is the kill; anything else is a failure of the program
    if (!(error instanceof TypeError) && !(error instanceof SyntaxError)) throw error;
  } finally {
    child.kill("SIGKILL");
    await gone;
  }
  expect(child.signalCode).toBe("SIGKILL");
  return answered;
}

async function openDoor(path: string): Promise<Door> {
  const child = spawn(process.execPath, [program, path, folder], {
    stdio: ["ignore", "pipe", "inherit"],
    // should this test fail half way, the program must not go on by itself
    timeout: 30_000,
    killSignal: "SIGKILL",
  });
  const [told] = await once(child.stdout, "data");
  const address = new URL(String(told).trim());
  const first = await fetch(address, { redirect: "manual" });
  const cookie = first.headers.get("set-cookie")?.split(";")[0] ?? "";
  const headers = { cookie, origin: address.origin, "content-type": "application/json" };
  return {
    child,
    async call(method, body) {
      const url = `${address.origin}/call/${method}`;
      const response = await fetch(url, { method: "POST", headers, body: JSON.stringify(body) });
      return response.json();
    },
  };
}

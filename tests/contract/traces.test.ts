import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { traceOnRoute } from "../../core/closeout/traceOnRoute.ts";
import { fiberWay } from "../../core/plant/fiberWay.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { createRouteFile } from "../../db/createRouteFile.ts";
import { keptFile } from "../../db/keptFiles.ts";
import type { Desk } from "../../electron/batch/verb.ts";
import { tracesVerb } from "../../electron/batch/verbs/traces.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { openSession } from "../../electron/host/session.ts";
import { takeTraceFolder } from "../../electron/host/traceFolder.ts";
import { smallRoute } from "../fixtures/route/buildRoute.ts";
import { type Shot, shootFiber } from "../fixtures/traces/shootFiber.ts";
import { faultCode, granted, withFile } from "./db/scratch.ts";

const stamp = { author: "R. Diaz", nowIso: () => "2026-05-04T15:00:00.000Z" };

function shotOf(fiber: number, wishes: Partial<Shot>): Uint8Array {
  const way = fiberWay(openPlant(smallRoute()), { cableId: "cable-1", fiber }, "feed");
  if (!way) throw new Error("the fiber has no way");
  return shootFiber(way, wishes);
}

test("a folder of traces is kept as one edit, each matched to its fiber, and what is open is asked", () => {
  withFile(smallRoute(), (file, scratch) => {
    const folder = join(scratch, "traces");
    mkdirSync(folder);
    writeFileSync(join(folder, "C1-F40.sor"), shotOf(40, { cableId: "C1", fiberId: "40" }));
    writeFileSync(join(folder, "broken.SOR"), shotOf(41, { cableId: "C1", fiberId: "41", brokenM: 70 }));
    writeFileSync(join(folder, "whose.sor"), shotOf(44, { cableId: "other" }));
    writeFileSync(join(folder, "photo.sor"), Uint8Array.from([0xff, 0xd8, 0xff]));
    writeFileSync(join(folder, "notes.txt"), "not looked at");
    const session = granted(openSession(file, stamp));
    const told = { fromEnd: "feed", leadM: 150 } as const;
    const taken = granted(takeTraceFolder(session, folder, told));
    expect(taken.brought.map(({ trace, asks }) => [trace.fileName, trace.fiber, asks])).toEqual([
      ["C1-F40.sor", 40, []],
      ["broken.SOR", 41, []],
      ["whose.sor", null, ["fiber"]],
    ]);
    expect(taken.refused.map((one) => [one.fileName, one.fault.code])).toEqual([["photo.sor", "not-a-trace"]]);
    const [whole, broken] = [...session.route().trace.values()];
    expect(keptFile(file.db, whole?.keptHash ?? "")?.length).toBeGreaterThan(8000);
    expect(traceOnRoute(session.plant, whole?.id ?? "")).toMatchObject({ match: { broken: null, missing: [] } });
    expect(traceOnRoute(session.plant, broken?.id ?? "")?.break?.fiberM).toBeCloseTo(70, 0);
    expect(session.history().undo).toBe("Keep 3 traces");
    expect(granted(takeTraceFolder(session, folder, told))).toMatchObject({ brought: [], presentCount: 3 });
  });
});

test("the command line tells whose each trace is and what it shows; a break is exit code 1, a wrong end is refused", async () => {
  await inScratchFolder(async (path, folder) => {
    writeFileSync(join(folder, "C1-F40.sor"), shotOf(40, { leadM: 0 }));
    writeFileSync(join(folder, "C1-F41.sor"), shotOf(41, { leadM: 0, brokenM: 70 }));
    const run = (...args: string[]) => tracesVerb.run([path, folder, ...args], desk);
    expect(await run("--end", "middle")).toMatchObject({ ok: false, fault: { code: "bad-arguments" } });
    expect(await run("--end", "hub", "--lead", "long")).toMatchObject({ ok: false, fault: { code: "bad-arguments" } });
    const told = await run("--end", "hub", "--lead", "0");
    expect(told).toMatchObject({ ok: true, value: { exitCode: 1 } });
    const lines = told.ok ? told.value.lines.join("\n") : "";
    expect(lines).toContain("C1-F40.sor: fiber 40 of cable C1, 2 of 2 places seen");
    expect(lines).toContain("C1-F41.sor: fiber 41 of cable C1, 1 of 2 places seen, broken");
    expect(lines).toMatch(/ends .* past pole P2 towards pole P3, give or take/);
  });
});

test("a folder that is not there, or holds no traces, is told", () => {
  withFile(smallRoute(), (file, scratch) => {
    const session = granted(openSession(file, stamp));
    const told = { fromEnd: null, leadM: null };
    expect(faultCode(takeTraceFolder(session, scratch, told))).toBe("no-traces");
    expect(faultCode(takeTraceFolder(session, join(scratch, "gone"), told))).not.toBe("granted");
  });
});

const desk: Desk = {
  stamp,
  assetsFolder: "",
  windowFolder: "",
  runJob: runJobHere,
  readInput: async () => "",
  say: () => {},
};

async function inScratchFolder(work: (path: string, folder: string) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "traces-"));
  const path = join(folder, "town.strand");
  granted(createRouteFile(path, smallRoute(), { author: "R. Diaz", atIso: "2026-05-04T15:00:00.000Z" })).close();
  try {
    await work(path, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

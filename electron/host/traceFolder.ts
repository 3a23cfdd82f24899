import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type ToldOfAll, type TraceBrought, traceToKeep } from "../../core/closeout/traceToKeep.ts";
import { type Fault, fail, ok, type Result, refused } from "../../core/model/result.ts";
import { keepFile } from "../../db/keptFiles.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import type { Session } from "./session.ts";

/** A reflectometer's file holds one fiber: far less than this. A larger one is none, and is not read. */
const mostBytes = 16 * 1024 * 1024;

/** What became of a folder of reflectometer files. */
export type FolderTaken = {
  /** Kept now; a file the route holds already is not told. */
  readonly brought: readonly TraceBrought[];
  readonly presentCount: number;
  readonly refused: readonly { readonly fileName: string; readonly fault: Fault }[];
};

/**
 * Keeps all reflectometer files of a folder as one edit. What a file leaves open stays open: it is of no fiber until somebody says so.
 *
 * @returns a fault where the folder cannot be read, holds no such file, or the edit is refused
 */
export function takeTraceFolder(session: Session, folder: string, told: ToldOfAll): Result<FolderTaken> {
  const shut = session.shut();
  if (shut) return refused(shut);
  return onDisk(folder, () => {
    const names = readdirSync(folder).filter((name) => /\.sor$/i.test(name));
    if (names.length === 0)
      return fail("no-traces", "The folder holds no reflectometer files.", folder, "Name a folder of .sor files.");
    const present = new Set([...session.route().trace.values()].map((one) => one.keptHash));
    const brought: TraceBrought[] = [];
    const refusals: { readonly fileName: string; readonly fault: Fault }[] = [];
    let presentCount = 0;
    for (const fileName of names.sort()) {
      const bytes = readFileSync(join(folder, fileName));
      const keptHash = bytes.length > mostBytes ? "" : keepFile(session.file.db, bytes);
      if (present.has(keptHash)) {
        presentCount += 1;
        continue;
      }
      const one = traceToKeep(session.route(), { fileName, bytes, keptHash }, told, isoOf);
      if (!one.ok) refusals.push({ fileName, fault: one.fault });
      else {
        present.add(keptHash);
        brought.push(one.value);
      }
    }
    if (brought.length > 0) {
      const traces = brought.map((one) => one.trace);
      const kept = session.run("trace.keep", {
        traces,
        by: session.stamp.author,
        atIso: session.stamp.nowIso(),
      });
      if (!kept.ok) return kept;
    }
    return ok({ brought, presentCount, refused: refusals });
  });
}

function isoOf(unixS: number): string {
  return new Date(unixS * 1000).toISOString();
}

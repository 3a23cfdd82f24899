import { copyFileSync, existsSync, renameSync, rmSync } from "node:fs";
import { resolve } from "node:path";
import { ok, type Result } from "../core/model/result.ts";
import { dropOldBackups, newBackupPath } from "./backup.ts";
import { readVersion } from "./header.ts";
import { checkWhole } from "./integrity.ts";
import { takeLock } from "./lock.ts";
import { type Opening, openRouteHandle } from "./openRouteFile.ts";
import { onDisk } from "./sqliteFault.ts";

/**
 * Puts a dated copy in the place of a closed route file, damaged or not. The present state is kept as a dated copy first.
 *
 * @returns path of the copy the present state went to
 */
export function restoreBackup(path: string, backupPath: string, opening: Opening): Result<string> {
  const full = resolve(path);
  const incoming = `${full}.part`;
  const lock = takeLock(full, opening);
  if (!lock.ok) return lock;
  try {
    return onDisk(full, () => {
      copyFileSync(backupPath, incoming);
      const whole = checkFile(incoming, opening);
      if (!whole.ok) return whole;
      const kept = keepPresent(full, opening.atIso);
      renameSync(incoming, full);
      dropOldBackups(full);
      return ok(kept);
    });
  } finally {
    rmSync(incoming, { force: true });
    lock.value.release();
  }
}

function checkFile(path: string, opening: Opening): Result<null> {
  const version = readVersion(path);
  if (!version.ok) return version;
  const handle = openRouteHandle(path, true, opening);
  if (!handle.ok) return handle;
  try {
    return checkWhole(handle.value.db, path);
  } finally {
    handle.value.close();
  }
}

/**
 * Copies byte for byte, as a damaged file may not open. An unfinished transaction's journal goes along: left behind, it
 * would be played into the restored file.
 */
function keepPresent(path: string, atIso: string): string {
  const kept = newBackupPath(path, atIso);
  for (const tail of ["", "-journal"]) {
    if (existsSync(path + tail)) copyFileSync(path + tail, kept + tail);
  }
  rmSync(`${path}-journal`, { force: true });
  return kept;
}

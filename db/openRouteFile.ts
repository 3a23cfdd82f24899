import { closeSync, openSync } from "node:fs";
import { resolve } from "node:path";
import { ok, type Result, refused } from "../core/model/result.ts";
import { climb } from "./climb.ts";
import { type Handle, nativeBindingPath, openHandle, type WriteDb } from "./driver.ts";
import { readVersion } from "./header.ts";
import { checkTables, checkWhole } from "./integrity.ts";
import { type Lock, type Stamp, takeLock } from "./lock.ts";
import { brokenProof } from "./proof.ts";
import { onDisk } from "./sqliteFault.ts";

/** An open route file, kept for this process until it is closed. */
export type RouteFile = { readonly path: string; readonly db: WriteDb; readonly close: () => void };

/** Who opens a file and when; under Electron also where its native parts lie. */
export type Opening = Stamp & { readonly nativeFolder?: string };

/**
 * Opens a route file for reading and writing, after looking whether it is whole and bringing it up to date.
 *
 * Faults: no-file, not-a-route, newer-file (left untouched), locked (with its holder), read-only, damaged, bad-binding;
 * journal-broken and rows-changed, where somebody changed it by other means: it may then still be looked into.
 */
export function openRouteFile(path: string, opening: Opening): Result<RouteFile> {
  const full = resolve(path);
  const version = readVersion(full);
  if (!version.ok) return version;
  const writable = onDisk(full, () => ok(closeSync(openSync(full, "r+"))));
  if (!writable.ok) return writable;
  const lock = takeLock(full, opening);
  if (!lock.ok) return lock;
  const handle = openRouteHandle(full, true, opening);
  if (!handle.ok) {
    lock.value.release();
    return handle;
  }
  const ready = onDisk(full, () => makeReady(handle.value.db, full, version.value, opening.atIso));
  const file = routeFile(full, handle.value, lock.value);
  if (ready.ok) return ok(file);
  file.close();
  return ready;
}

/** A handle with the settings every route file is used under. */
export function openRouteHandle(path: string, mustExist: boolean, opening: Opening): Result<Handle> {
  const folder = opening.nativeFolder;
  const binding =
    folder === undefined ? null : nativeBindingPath(folder, process.versions, process.platform, process.arch);
  return onDisk(path, () => {
    const handle = openHandle(path, mustExist, binding);
    if (!handle.ok) return handle;
    try {
      handle.value.db.exec("PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL; PRAGMA journal_mode = DELETE;");
    } catch (error) {
      handle.value.close();
      throw error;
    }
    return handle;
  });
}

function makeReady(db: WriteDb, path: string, version: number, atIso: string): Result<null> {
  const whole = checkWhole(db, path);
  if (!whole.ok) return whole;
  const climbed = climb(db, path, version, atIso);
  if (!climbed.ok) return climbed;
  const tables = checkTables(db, path);
  if (!tables.ok) return tables;
  const broken = brokenProof(db);
  return broken ? refused(broken) : ok(null);
}

function routeFile(path: string, handle: Handle, lock: Lock): RouteFile {
  const close = (): void => {
    handle.close();
    lock.release();
  };
  return { path, db: handle.db, close };
}

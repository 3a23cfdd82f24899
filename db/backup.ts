import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { fail, ok, type Result } from "../core/model/result.ts";
import type { WriteDb } from "./driver.ts";
import { onDisk } from "./sqliteFault.ts";

/** A dated copy of a route file. */
export type Backup = { readonly path: string; readonly atIso: string; readonly byteCount: number };

/** Dated copies kept beside a file; the oldest go. */
export const keptBackupCount = 10;

/** The folder beside a route file that holds its dated copies. */
function backupFolder(path: string): string {
  return `${resolve(path)}.backups`;
}

/**
 * Puts a dated copy of an open file into the folder beside it.
 *
 * @param atIso the time that names the copy; a copy of that very time is replaced
 */
export function backUp(db: WriteDb, path: string, atIso: string): Result<Backup> {
  return onDisk(backupFolder(path), () => {
    const target = newBackupPath(path, atIso);
    writeCopy(db, target);
    dropOldBackups(path);
    return ok({ path: target, atIso, byteCount: statSync(target).size });
  });
}

/** The dated copies of a file, newest first. */
export function listBackups(path: string): Backup[] {
  const folder = backupFolder(path);
  if (!existsSync(folder)) return [];
  const dated = readdirSync(folder).flatMap((name) => {
    const at = backupName.exec(name)?.groups;
    if (!at) return [];
    const copy = join(folder, name);
    return [{ path: copy, atIso: `${at.day}T${at.hour}:${at.minute}:${at.rest}`, byteCount: statSync(copy).size }];
  });
  return dated.sort((a, b) => (a.atIso < b.atIso ? 1 : -1));
}

/** Where a copy of that time goes; makes the folder. */
export function newBackupPath(path: string, atIso: string): string {
  const folder = backupFolder(path);
  mkdirSync(folder, { recursive: true });
  return join(folder, `${atIso.replaceAll(":", "-")} ${basename(path)}`);
}

/** Takes away all but the newest copies. */
export function dropOldBackups(path: string): void {
  for (const old of listBackups(path).slice(keptBackupCount)) {
    for (const part of [old.path, `${old.path}-journal`]) rmSync(part, { force: true });
  }
}

/** Writes the whole file, journal included, under another name; refuses a name that is taken. */
export function saveCopyAs(db: WriteDb, target: string): Result<string> {
  const full = resolve(target);
  if (existsSync(full)) return fail("exists", "There is already a file of this name.", full, "Choose another name.");
  return onDisk(full, () => {
    writeCopy(db, full);
    return ok(full);
  });
}

/** A copy appears under its name only when it is whole. */
function writeCopy(db: WriteDb, target: string): void {
  const unfinished = `${target}.part`;
  rmSync(unfinished, { force: true });
  db.run("VACUUM INTO ?", unfinished);
  renameSync(unfinished, target);
}

// A colon may not stand in a file name everywhere, so the time is written with hyphens.
const backupName =
  /^(?<day>\d{4}-\d\d-\d\d)T(?<hour>\d\d)-(?<minute>\d\d)-(?<rest>\d\d(?:\.\d+)?Z?) .+(?<!\.part|-journal)$/;

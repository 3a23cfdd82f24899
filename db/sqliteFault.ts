import type { Fault, Result } from "../core/model/result.ts";
import { sqliteCode } from "./driver.ts";

/** Runs what may meet a bad disk or file; what SQLite says becomes a fault, any other error is the program's and goes on. */
export function onDisk<T>(where: string, work: () => Result<T>): Result<T> {
  try {
    return work();
  } catch (error) {
    const fault = diskFault(error, where);
    if (!fault) throw error;
    return { ok: false, fault };
  }
}

/** The fault a file or disk is to blame for; null where the program is. */
function diskFault(error: unknown, where: string): Fault | null {
  const code = sqliteCode(error) ?? nodeCode(error);
  if (!code) return null;
  const known = faults.find(({ codes }) => codes.some((each) => code === each || code.startsWith(`${each}_`)));
  return known ? { code: known.code, what: known.what, where, mend: known.mend } : null;
}

function nodeCode(error: unknown): string | null {
  return error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : null;
}

const faults = [
  {
    codes: ["SQLITE_CORRUPT", "SQLITE_NOTADB"],
    code: "damaged",
    what: "The route file is damaged.",
    mend: "Restore a backup from the folder beside it, or an older copy.",
  },
  {
    codes: ["SQLITE_BUSY", "SQLITE_LOCKED"],
    code: "locked",
    what: "Another program is using the route file.",
    mend: "Close it there and try again.",
  },
  {
    codes: ["EBUSY"],
    code: "locked",
    what: "Another program is using the file.",
    mend: "Close it there and try again.",
  },
  {
    codes: ["SQLITE_READONLY", "SQLITE_PERM", "SQLITE_CANTOPEN", "EACCES", "EPERM", "EROFS"],
    code: "read-only",
    what: "The file or its folder cannot be written to.",
    mend: "Use a folder you may write to; a file that is there already can be copied into it.",
  },
  {
    codes: ["SQLITE_FULL", "ENOSPC"],
    code: "disk-full",
    what: "The disk is full; nothing was changed.",
    mend: "Make room and try again.",
  },
  {
    codes: ["SQLITE_IOERR", "EIO"],
    code: "disk-error",
    what: "The disk refused to read or write.",
    mend: "Check the disk or the network drive, then open the file again.",
  },
  {
    codes: ["EISDIR"],
    code: "is-a-folder",
    what: "A folder of that name is there.",
    mend: "Name a file.",
  },
  {
    codes: ["EEXIST"],
    code: "is-a-file",
    what: "A file of that name is there.",
    mend: "Name a folder.",
  },
  {
    codes: ["ENOENT", "ENOTDIR"],
    code: "no-file",
    what: "There is no such file or folder.",
    mend: "Check the path.",
  },
] as const;

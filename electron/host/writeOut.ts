import { closeSync, existsSync, openSync, readSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { fail, ok, type Result } from "../../core/model/result.ts";
import { onDisk } from "../../db/sqliteFault.ts";

const databaseMark = "SQLite format 3\0";

/**
 * Writes a drawing or a list to a file, over an older one of that name.
 *
 * Faults: is-a-route where a route file of any version stands there, since writing over it would lose the work in it; no-file,
 * is-a-folder, read-only, disk-full and disk-error.
 */
export function writeOut(out: string, content: string | Uint8Array): Result<{ path: string; byteCount: number }> {
  const path = resolve(out);
  return onDisk(path, () => {
    if (holdsDatabase(path)) {
      return fail(
        "is-a-route",
        "A route file of that name is there; writing would destroy it.",
        path,
        "Choose another name.",
      );
    }
    writeFileSync(path, content);
    return ok({ path, byteCount: Buffer.byteLength(content) });
  });
}

function holdsDatabase(path: string): boolean {
  if (!existsSync(path)) return false;
  const file = openSync(path, "r");
  try {
    const head = Buffer.alloc(databaseMark.length);
    readSync(file, head, 0, head.length, 0);
    return head.toString("latin1") === databaseMark;
  } finally {
    closeSync(file);
  }
}

import { mkdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { ok, type Result } from "../../core/model/result.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import { writeOut } from "./writeOut.ts";

/** Writes files into a folder that is made where it is missing. Faults: is-a-file, and those of writeOut. */
export function writeFolder(
  folder: string,
  files: readonly { readonly name: string; readonly content: string | Uint8Array }[],
): Result<{ path: string; byteCount: number }> {
  const path = resolve(folder);
  const made = onDisk(path, () => ok(mkdirSync(path, { recursive: true })));
  if (!made.ok) return made;
  let byteCount = 0;
  for (const { name, content } of files) {
    const written = writeOut(join(path, name), content);
    if (!written.ok) return written;
    byteCount += written.value.byteCount;
  }
  return ok({ path, byteCount });
}

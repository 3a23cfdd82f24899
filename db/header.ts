import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import { fail, ok, type Result } from "../core/model/result.ts";
import { migrations } from "./migrations/migrations.ts";
import { onDisk } from "./sqliteFault.ts";

/** Stands in the header of every route file: "STRW" as four bytes of ASCII. */
export const applicationId = 0x53545257;

/** The version a file has once this program has opened it. */
export const newestVersion = Math.max(...migrations.map(({ version }) => version));

const headerByteCount = 100;
// Places in the header, from the SQLite file format document, section 1.3.
const magic = "SQLite format 3\0";
const userVersionAt = 60;
const applicationIdAt = 68;

/**
 * The version of the route file at a path, read from its first bytes alone: nothing is written, not even beside it.
 *
 * Refuses what is not there, is no route file, or was made by a newer program.
 */
export function readVersion(path: string): Result<number> {
  const read = onDisk(path, () => ok(readHeader(path)));
  if (!read.ok) return read;
  const header = read.value;
  const isRoute =
    header !== null &&
    header.toString("latin1", 0, magic.length) === magic &&
    header.readUInt32BE(applicationIdAt) === applicationId;
  if (!isRoute) return fail("not-a-route", "This is not a route file.", path, "Choose a file that ends in .strand.");
  const version = header.readUInt32BE(userVersionAt);
  if (version > newestVersion) {
    const what = `The file is version ${version}; this program knows versions up to ${newestVersion}.`;
    return fail("newer-file", what, path, "Open it with the newer program that wrote it; it was left untouched.");
  }
  return ok(version);
}

/** Null where the path holds no file of that length. */
function readHeader(path: string): Buffer | null {
  const file = openSync(path, "r");
  try {
    if (!fstatSync(file).isFile()) return null;
    const header = Buffer.alloc(headerByteCount);
    return readSync(file, header, 0, headerByteCount, 0) === headerByteCount ? header : null;
  } finally {
    closeSync(file);
  }
}

import { createHash } from "node:crypto";
import type { ReadDb, WriteDb } from "./driver.ts";

/**
 * Keeps the bytes of a photo, a trace or a packet beside the rows; bytes that are there already are kept once.
 *
 * Nothing takes them away again: an edit that named them may be undone and made again.
 *
 * @returns their SHA-256 in hex, by which rows name them
 */
export function keepFile(db: WriteDb, bytes: Uint8Array): string {
  const hash = createHash("sha256").update(bytes).digest("hex");
  db.run("INSERT INTO kept_file (hash, bytes) VALUES (?, ?) ON CONFLICT (hash) DO NOTHING", hash, bytes);
  return hash;
}

/** The bytes kept under a hash; null where there are none. */
export function keptFile(db: ReadDb, hash: string): Uint8Array | null {
  return db.bytes("SELECT bytes FROM kept_file WHERE hash = ?", hash);
}

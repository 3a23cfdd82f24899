import { existsSync, readFileSync, realpathSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { z } from "zod";
import { fail, ok, type Result } from "../core/model/result.ts";
import { onDisk } from "./sqliteFault.ts";

/** Who is at work, and when. */
export type Stamp = { readonly author: string; readonly atIso: string };

/** A route file kept for one process; `release` gives it back. */
export type Lock = { readonly release: () => void };

const holderSchema = z.strictObject({
  host: z.string(),
  processId: z.number().int(),
  author: z.string(),
  atIso: z.string(),
});
type Holder = z.infer<typeof holderSchema>;

const heldHere = new Set<string>();

/** The file beside a route file that says who has it open. */
export function lockPath(path: string): string {
  return `${path}.lock`;
}

/**
 * Keeps a route file for this process. A lock whose process on this machine is dead is taken over.
 *
 * The fault "locked" tells who has it, on which machine, since when.
 */
export function takeLock(path: string, stamp: Stamp): Result<Lock> {
  const holder: Holder = { host: hostname(), processId: process.pid, author: stamp.author, atIso: stamp.atIso };
  return onDisk(path, () => {
    // One file may be reached by several names.
    const beside = lockPath(existsSync(path) ? realpathSync(path) : path);
    if (!claim(beside, holder)) {
      const present = readHolder(beside);
      if (present === null || !isDead(present, beside)) return locked(present, path, beside);
      setAside(beside, present);
      if (!claim(beside, holder)) return locked(readHolder(beside), path, beside);
    }
    heldHere.add(beside);
    let held = true;
    const release = (): void => {
      if (!held) return;
      held = false;
      heldHere.delete(beside);
      rmSync(beside, { force: true });
    };
    return ok({ release });
  });
}

/** False where somebody's lock is there. */
function claim(beside: string, holder: Holder): boolean {
  try {
    writeFileSync(beside, JSON.stringify(holder), { flag: "wx" });
    return true;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST") return false;
    throw error;
  }
}

/** Null where the lock cannot be read: half written, or not ours. */
function readHolder(beside: string): Holder | null {
  try {
    return holderSchema.parse(JSON.parse(readFileSync(beside, "utf8")));
  } catch {
    return null;
  }
}

function isDead(holder: Holder, beside: string): boolean {
  if (holder.host !== hostname()) return false;
  // A lock with our own process id that we do not hold was left by an earlier process of that id.
  if (holder.processId === process.pid) return !heldHere.has(beside);
  try {
    process.kill(holder.processId, 0);
    return false;
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "ESRCH";
  }
}

/** Moves a dead lock away first and looks again, as another program may have taken it over meanwhile. */
function setAside(beside: string, dead: Holder): void {
  const aside = `${beside}.${process.pid}`;
  if (!existsSync(beside)) return;
  renameSync(beside, aside);
  const moved = readHolder(aside);
  if (moved && moved.processId !== dead.processId) claim(beside, moved);
  rmSync(aside, { force: true });
}

function locked(holder: Holder | null, path: string, beside: string): Result<Lock> {
  const who = holder
    ? `${holder.author || "Somebody"} has the file open on ${holder.host}, process ${holder.processId}, since ${holder.atIso}.`
    : "Another program has the file open.";
  const mend = `Close it there. If no such program is running any more, delete ${beside}.`;
  return fail("locked", who, path, mend);
}

import { createHash } from "node:crypto";
import { readdirSync, realpathSync, statSync } from "node:fs";
import { basename, dirname, join, sep } from "node:path";
import type { Reply } from "../../core/contract/contract.ts";
import { fail, ok, type Result } from "../../core/model/result.ts";
import { onDisk } from "../../db/sqliteFault.ts";

/** Folder listings for the page, below the home folder and the drives; the page knows places by ids of our making only. */
export type Folders = {
  readonly browse: (folderId: string | null) => Result<Reply<"files.browse">>;
  /** Path of a folder or route file that was listed. */
  readonly pathOf: (entryId: string) => Result<string>;
};

type Named = { readonly entryId: string; readonly name: string };

/**
 * Folders below the roots given; what is hidden is left out, and a link that leads elsewhere is not followed.
 *
 * @param roots  home folder first, then the drives
 */
export function openFolders(roots: readonly string[]): Folders {
  const paths = new Map<string, string>();
  const idOf = (path: string): string => {
    const id = entryIdOf(path);
    paths.set(id, path);
    return id;
  };
  const named = (path: string): Named => ({ entryId: idOf(path), name: basename(path) || path });
  const isInside = (path: string): boolean => {
    const real = realpathSync(path);
    return roots.map(realRoot).some((root) => real === root || real.startsWith(root.endsWith(sep) ? root : root + sep));
  };
  const pathOf = (entryId: string): Result<string> => {
    const path = paths.get(entryId);
    if (path === undefined)
      return fail("not-listed", "That place is not in the listing.", entryId, "Choose it from the list again.");
    return onDisk(path, () => (isInside(path) ? ok(path) : outside(path)));
  };
  return {
    pathOf,
    browse(folderId) {
      const folder = folderId === null ? ok(roots[0] ?? "") : pathOf(folderId);
      if (!folder.ok) return folder;
      const path = folder.value;
      return onDisk(path, () => {
        const { folders, routeFiles } = listing(path, isInside);
        return ok({
          folder: { entryId: idOf(path), name: path },
          parentId: roots.includes(path) || !isInside(dirname(path)) ? null : idOf(dirname(path)),
          roots: roots.map((root) => ({
            entryId: idOf(root),
            name: root === roots[0] ? "Home" : basename(root) || root,
          })),
          folders: folders.map(named),
          routeFiles: routeFiles.map((file) => {
            const { size, mtime } = statSync(file);
            return { ...named(file), byteCount: size, modifiedAtIso: mtime.toISOString() };
          }),
        });
      });
    },
  };
}

/** An id for a path that says nothing about it. */
export function entryIdOf(path: string): string {
  return createHash("sha256").update(path).digest("base64url").slice(0, 22);
}

function listing(folder: string, isInside: (path: string) => boolean) {
  const folders: string[] = [];
  const routeFiles: string[] = [];
  for (const name of readdirSync(folder).sort((a, b) => a.localeCompare(b, undefined, { numeric: true }))) {
    if (name.startsWith(".") || name.endsWith(".strand.backups")) continue;
    const path = join(folder, name);
    try {
      const entry = statSync(path);
      if (!isInside(path)) continue;
      if (entry.isDirectory()) folders.push(path);
      else if (entry.isFile() && name.endsWith(".strand")) routeFiles.push(path);
    } catch {
      // a broken link or what this person may not see is no choice
    }
  }
  return { folders, routeFiles };
}

function realRoot(root: string): string {
  try {
    return realpathSync(root);
  } catch {
    return root;
  }
}

function outside(path: string): Result<string> {
  const mend = "Choose a place below your home folder or on a drive, or start the program with the file's name.";
  return fail("outside", "That place lies outside your home folder and the drives.", path, mend);
}

import { spawnSync } from "node:child_process";
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { Result } from "../../../core/model/result.ts";
import { createRouteFile } from "../../../db/createRouteFile.ts";
import { applicationId, newestVersion } from "../../../db/header.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { lockPath } from "../../../db/lock.ts";
import { openRouteFile } from "../../../db/openRouteFile.ts";
import { faultCode, granted, inScratch, opening, routeIn, withFile } from "./scratch.ts";
import { smallRoute } from "./smallRoute.ts";

test("a route comes back from its file as it went in", () => {
  inScratch((path, folder) => {
    granted(createRouteFile(path, smallRoute(), opening)).close();
    const file = granted(openRouteFile(path, opening));
    expect(routeIn(file)).toEqual(smallRoute());
    file.close();
    expect(readdirSync(folder)).toEqual(["elm street.strand"]);
  });
});

test("a route file has full synchronisation and foreign keys on, and a rollback journal only while an edit is written", () => {
  withFile(smallRoute(), ({ db, path }) => {
    expect(db.get("PRAGMA synchronous")).toEqual({ synchronous: 2 });
    expect(db.get("PRAGMA foreign_keys")).toEqual({ foreign_keys: 1 });
    const besideIt = () => ["-journal", "-wal"].filter((tail) => existsSync(path + tail));
    db.exec("BEGIN; UPDATE pole SET note = 'leans'");
    expect(besideIt()).toEqual(["-journal"]);
    db.exec("COMMIT");
    expect(besideIt()).toEqual([]);
    expect(db.get("PRAGMA application_id")).toEqual({ application_id: applicationId });
  });
});

test("a new file never replaces one that is there, and a refused route leaves nothing behind", () => {
  inScratch((path, folder) => {
    writeFileSync(path, "somebody's notes");
    expect(faultCode(createRouteFile(path, smallRoute(), opening))).toBe("exists");
    expect(readFileSync(path, "utf8")).toBe("somebody's notes");
    const orphan = { ...smallRoute(), pole: new Map() };
    expect(faultCode(createRouteFile(join(folder, "b.strand"), orphan, opening))).toBe("broken-reference");
    expect(faultCode(createRouteFile(join(folder, "b.strand"), { ...orphan, settings: new Map() }, opening))).toBe(
      "bad-row",
    );
    const nowhere = join(folder, "no such folder", "c.strand");
    expect(faultCode(createRouteFile(nowhere, smallRoute(), opening))).toBe("no-folder");
    expect(readdirSync(folder)).toEqual(["elm street.strand"]);
  });
});

test("a file that is not there, a folder, a text and a stranger's database are refused in plain words", () => {
  inScratch((path, folder) => {
    expect(faultCode(openRouteFile(path, opening))).toBe("no-file");
    expect(faultCode(openRouteFile(folder, opening))).toBe("not-a-route");
    writeFileSync(path, "");
    expect(faultCode(openRouteFile(path, opening))).toBe("not-a-route");
    writeFileSync(path, "tag,lon,lat\n".repeat(100));
    expect(faultCode(openRouteFile(path, opening))).toBe("not-a-route");
    alterHeader(path, smallFile(folder), 68, 42);
    expect(faultCode(openRouteFile(path, opening))).toBe("not-a-route");
  });
});

test("a file from a newer program is refused and left untouched", () => {
  inScratch((path, folder) => {
    alterHeader(path, smallFile(folder), 60, newestVersion + 1);
    const before = readFileSync(path);
    const listing = readdirSync(folder);
    expect(openRouteFile(path, opening)).toMatchObject({ fault: { code: "newer-file", where: path } });
    expect(readFileSync(path).equals(before)).toBe(true);
    expect(readdirSync(folder)).toEqual(listing);
  });
});

test("a file with a broken page, a cut end or a reference to nothing is called damaged and can be opened by nobody", () => {
  inScratch((path, folder) => {
    const bytes = readFileSync(smallFile(folder));
    writeFileSync(path, bytes.subarray(0, bytes.length / 2));
    expect(faultCode(openRouteFile(path, opening))).toBe("damaged");
    writeFileSync(path, Buffer.concat([bytes.subarray(0, 4096), Buffer.alloc(bytes.length - 4096, 0xa5)]));
    expect(faultCode(openRouteFile(path, opening))).toBe("damaged");
    const orphaned = sideDoor(path, folder, "PRAGMA foreign_keys = OFF; DELETE FROM pole WHERE id = 'pole-1'");
    expect(orphaned).toMatchObject({ fault: { code: "damaged", where: `${path}, span span-1, from_pole_id` } });
    expect(sideDoor(path, folder, "ALTER TABLE pole DROP COLUMN owner")).toMatchObject({ fault: { code: "damaged" } });
    expect(existsSync(lockPath(path))).toBe(false);
  });
});

test("a value the model refuses is refused when the route is loaded, by table, id and field", () => {
  withFile(smallRoute(), ({ db }) => {
    db.exec("PRAGMA ignore_check_constraints = ON; UPDATE pole SET above_ground_m = -3 WHERE id = 'pole-2'");
    expect(loadRoute(db)).toMatchObject({ fault: { code: "bad-row", where: "pole pole-2, aboveGroundM" } });
    db.exec("UPDATE pole SET above_ground_m = 9, terminal_allowed = 7 WHERE id = 'pole-2'");
    expect(loadRoute(db)).toMatchObject({ fault: { code: "bad-row", where: "pole pole-2, terminalAllowed" } });
    db.exec("DELETE FROM settings; UPDATE pole SET terminal_allowed = 0");
    expect(loadRoute(db)).toMatchObject({ fault: { code: "damaged", where: "settings" } });
  });
});

test("a second opener is told who has the file, and gets it once it is closed", () => {
  inScratch((path) => {
    const first = granted(createRouteFile(path, smallRoute(), opening));
    const second = openRouteFile(path, { author: "Office", atIso: "2026-03-04T06:00:00Z" });
    expect(second).toMatchObject({ fault: { code: "locked" } });
    for (const told of ["R. Field", hostname(), String(process.pid), opening.atIso]) {
      expect(second.ok ? "" : second.fault.what).toContain(told);
    }
    first.close();
    granted(openRouteFile(path, opening)).close();
  });
});

test("a lock is taken over from a dead process of this machine, never from a living one or from another machine", () => {
  inScratch((path) => {
    granted(createRouteFile(path, smallRoute(), opening)).close();
    const leaveLock = (host: string, processId: number | undefined) =>
      writeFileSync(lockPath(path), JSON.stringify({ host, processId, author: "", atIso: opening.atIso }));
    const deadId = spawnSync(process.execPath, ["-e", "0"]).pid;
    leaveLock("another-machine", deadId);
    expect(faultCode(openRouteFile(path, opening))).toBe("locked");
    leaveLock(hostname(), process.ppid);
    expect(faultCode(openRouteFile(path, opening))).toBe("locked");
    writeFileSync(lockPath(path), "half a li");
    expect(faultCode(openRouteFile(path, opening))).toBe("locked");
    for (const gone of [deadId, process.pid]) {
      leaveLock(hostname(), gone);
      granted(openRouteFile(path, opening)).close();
      expect(existsSync(lockPath(path))).toBe(false);
    }
  });
});

test("a file reached by another name is the same file", () => {
  inScratch((path, folder) => {
    const file = granted(createRouteFile(path, smallRoute(), opening));
    const shortcut = join(folder, "shortcut.strand");
    symlinkSync(path, shortcut);
    expect(faultCode(openRouteFile(shortcut, opening))).toBe("locked");
    file.close();
    const again = granted(openRouteFile(shortcut, opening));
    file.close();
    expect(faultCode(openRouteFile(path, opening))).toBe("locked");
    again.close();
  });
});

test("a folder or file that cannot be written to is said to be so", () => {
  inScratch((_, folder) => {
    const closed = join(folder, "closed");
    mkdirSync(closed);
    const inside = join(closed, "a.strand");
    copyFileSync(smallFile(folder), inside);
    chmodSync(folder, 0o755);
    chmodSync(inside, 0o666);
    chmodSync(closed, 0o555);
    expect(faultCode(asPlainUser(() => openRouteFile(inside, opening)))).toBe("read-only");
    const wanted = join(closed, "b.strand");
    expect(asPlainUser(() => createRouteFile(wanted, smallRoute(), opening))).toMatchObject({
      ok: false,
      fault: { code: "read-only", where: wanted },
    });
    chmodSync(closed, 0o777);
    chmodSync(inside, 0o444);
    expect(faultCode(asPlainUser(() => openRouteFile(inside, opening)))).toBe("read-only");
  });
});

/** A closed route file to make others from. */
function smallFile(folder: string): string {
  const path = join(folder, "small.strand");
  if (!existsSync(path)) granted(createRouteFile(path, smallRoute(), opening)).close();
  return path;
}

/** A copy with one number of the header replaced. */
function alterHeader(path: string, from: string, at: number, value: number): void {
  const bytes = readFileSync(from);
  bytes.writeUInt32BE(value, at);
  writeFileSync(path, bytes);
}

/** Opens a copy that somebody has edited by other means. */
function sideDoor(path: string, folder: string, sql: string): Result<unknown> {
  copyFileSync(smallFile(folder), path);
  const file = granted(openRouteFile(path, opening));
  file.db.exec(sql);
  file.close();
  return openRouteFile(path, opening);
}

/** Nothing is closed to the administrator, so the work is done as nobody in particular where the tests run as one. */
function asPlainUser<T>(work: () => T): T {
  if (process.getuid?.() !== 0 || !process.seteuid) return work();
  process.seteuid(65_534);
  try {
    return work();
  } finally {
    process.seteuid(0);
  }
}

import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { backUp, keptBackupCount, listBackups, saveCopyAs } from "../../../db/backup.ts";
import { createRouteFile } from "../../../db/createRouteFile.ts";
import { undoable } from "../../../db/history.ts";
import { openRouteFile } from "../../../db/openRouteFile.ts";
import { restoreBackup } from "../../../db/restoreBackup.ts";
import { writeChange } from "../../../db/writeChange.ts";
import { faultCode, granted, inScratch, opening, routeIn, withFile } from "../../contract/db/scratch.ts";
import { raisePole, smallRoute } from "../../contract/db/smallRoute.ts";

const raise = { label: "Raise pole", ...opening, rows: [raisePole(3)] };

test("dated copies are listed newest first with time and size, and the oldest go", () => {
  withFile(smallRoute(), (file) => {
    const timeOf = (hour: number) => `2026-03-04T${String(hour).padStart(2, "0")}:00:00.250Z`;
    for (let hour = 0; hour < keptBackupCount + 3; hour++) granted(backUp(file.db, file.path, timeOf(hour)));
    const listed = listBackups(file.path);
    expect(listed.length).toBe(keptBackupCount);
    expect([listed[0]?.atIso, listed.at(-1)?.atIso]).toEqual([timeOf(keptBackupCount + 2), timeOf(3)]);
    expect(listed.every(({ path, byteCount }) => readFileSync(path).length === byteCount)).toBe(true);
  });
});

test("a person's own file in the folder of copies is neither listed nor taken away", () => {
  withFile(smallRoute(), (file) => {
    granted(backUp(file.db, file.path, "2026-03-04T00:00:00Z"));
    const own = join(`${file.path}.backups`, "before the storm.strand");
    writeFileSync(own, "mine");
    for (let day = 10; day < 22; day++) granted(backUp(file.db, file.path, `2026-03-${day}T00:00:00Z`));
    expect(listBackups(file.path).some(({ path }) => path === own)).toBe(false);
    expect(readFileSync(own, "utf8")).toBe("mine");
  });
});

test("restoring brings the copy back and keeps the present state as one more copy", () => {
  inScratch((path) => {
    const file = granted(createRouteFile(path, smallRoute(), opening));
    const copy = granted(backUp(file.db, path, "2026-03-04T00:00:00Z"));
    granted(writeChange(file.db, raise));
    const raised = routeIn(file);
    expect(faultCode(restoreBackup(path, copy.path, opening))).toBe("locked");
    file.close();
    const kept = granted(restoreBackup(path, copy.path, opening));
    const restored = granted(openRouteFile(path, opening));
    expect(routeIn(restored)).toEqual(smallRoute());
    restored.close();
    expect(listBackups(path).map((backup) => backup.path)).toEqual([kept, copy.path]);
    const present = granted(openRouteFile(kept, opening));
    expect(routeIn(present)).toEqual(raised);
    present.close();
  });
});

test("a damaged file is restored, and its unfinished journal is not played into the restored one", () => {
  inScratch((path) => {
    const file = granted(createRouteFile(path, smallRoute(), opening));
    const copy = granted(backUp(file.db, path, "2026-03-04T00:00:00Z"));
    file.close();
    writeFileSync(path, "ruined");
    writeFileSync(`${path}-journal`, "half a transaction");
    const kept = granted(restoreBackup(path, copy.path, opening));
    expect([existsSync(`${path}-journal`), readFileSync(`${kept}-journal`, "utf8")]).toEqual([
      false,
      "half a transaction",
    ]);
    const restored = granted(openRouteFile(path, opening));
    expect(routeIn(restored)).toEqual(smallRoute());
    restored.close();
  });
});

test("a copy that is damaged or missing is not put in place of the route", () => {
  inScratch((path, folder) => {
    granted(createRouteFile(path, smallRoute(), opening)).close();
    const before = readFileSync(path);
    const ruined = join(folder, "ruined.strand");
    writeFileSync(ruined, before.subarray(0, before.length / 2));
    expect(faultCode(restoreBackup(path, ruined, opening))).toBe("damaged");
    expect(faultCode(restoreBackup(path, join(folder, "gone.strand"), opening))).toBe("no-file");
    expect(readFileSync(path).equals(before)).toBe(true);
  });
});

test("a copy under another name is a route file with all its history, and never replaces a file", () => {
  withFile(smallRoute(), (file, folder) => {
    granted(writeChange(file.db, raise));
    const target = granted(saveCopyAs(file.db, join(folder, "for the county.strand")));
    expect(faultCode(saveCopyAs(file.db, target))).toBe("exists");
    const copy = granted(openRouteFile(target, opening));
    expect(routeIn(copy)).toEqual(routeIn(file));
    expect(undoable(copy.db, 5).length).toBe(1);
    copy.close();
  });
});

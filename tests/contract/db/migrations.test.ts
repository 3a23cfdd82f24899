import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { ok } from "../../../core/model/result.ts";
import { listBackups } from "../../../db/backup.ts";
import { climb } from "../../../db/climb.ts";
import { shapeOf } from "../../../db/columns.ts";
import { newestVersion } from "../../../db/header.ts";
import { type Migration, migrations } from "../../../db/migrations/migrations.ts";
import { granted, opening, routeIn, withFile } from "./scratch.ts";
import { smallRoute } from "./smallRoute.ts";

const next = newestVersion + 1;
const addBond: Migration = {
  version: next,
  up: (db) => db.exec("CREATE TABLE bond (id TEXT PRIMARY KEY NOT NULL) STRICT"),
};
const breaks: Migration = {
  version: next + 1,
  up(db) {
    db.exec("CREATE TABLE half_made (id TEXT PRIMARY KEY NOT NULL) STRICT");
    db.exec("ALTER TABLE nowhere ADD COLUMN x");
  },
};

test("the versions of the migrations rise by one, and every migration in the folder is in the list", () => {
  expect(migrations.map(({ version }) => version)).toEqual(migrations.map((_, index) => index + 1));
  const files = readdirSync(new URL("../../../db/migrations", import.meta.url)).filter((name) => /^\d{4}-/.test(name));
  expect(files.length).toBe(migrations.length);
});

test("a file that climbs keeps a dated copy of what it was and every row", () => {
  withFile(smallRoute(), (file) => {
    const before = routeIn(file);
    expect(climb(file.db, file.path, newestVersion, opening.atIso, [...migrations, addBond])).toEqual(ok(next));
    expect(file.db.get("PRAGMA user_version")).toEqual({ user_version: next });
    expect(file.db.all("SELECT * FROM bond")).toEqual([]);
    expect(routeIn(file)).toEqual(before);
    expect(listBackups(file.path).map(({ atIso }) => atIso)).toEqual([opening.atIso]);
  });
});

test("a step that fails takes the whole climb back", () => {
  withFile(smallRoute(), (file) => {
    expect(() => climb(file.db, file.path, newestVersion, opening.atIso, [...migrations, addBond, breaks])).toThrow(
      "nowhere",
    );
    expect(file.db.get("PRAGMA user_version")).toEqual({ user_version: newestVersion });
    expect(file.db.all("SELECT name FROM sqlite_schema WHERE name IN ('bond', 'half_made')")).toEqual([]);
    expect(routeIn(file)).toEqual(smallRoute());
  });
});

test("a file of the newest version does not climb and leaves no copy", () => {
  withFile(smallRoute(), (file) => {
    expect(granted(climb(file.db, file.path, newestVersion, opening.atIso))).toBe(newestVersion);
    expect(listBackups(file.path)).toEqual([]);
  });
});

test("a new file stands at the newest version and has the columns of the model", () => {
  withFile(smallRoute(), ({ db }) => {
    expect(db.get("PRAGMA user_version")).toEqual({ user_version: newestVersion });
    expect(db.arrays(shapeOf("settings").selectAll).length).toBe(1);
  });
});

import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { createRouteFile } from "../../../db/createRouteFile.ts";
import type { WriteDb } from "../../../db/driver.ts";
import { newestVersion } from "../../../db/header.ts";
import { undo } from "../../../db/history.ts";
import { keepFile } from "../../../db/keptFiles.ts";
import { lookInto } from "../../../db/lookInto.ts";
import { type Migration, migrations } from "../../../db/migrations/migrations.ts";
import { openRouteFile } from "../../../db/openRouteFile.ts";
import { brokenProof, brokenThroughout } from "../../../db/proof.ts";
import { writeChange } from "../../../db/writeChange.ts";
import { enterEdit, olderRoute, withVersion } from "../../contract/db/olderFile.ts";
import { faultCode, granted, inScratch, opening, routeIn, withFile } from "../../contract/db/scratch.ts";
import { raisePole, signatureFor, smallRoute } from "../../contract/db/smallRoute.ts";

function raise(db: WriteDb, ...heights: number[]): void {
  for (const height of heights)
    granted(writeChange(db, { label: `Raise to ${height}`, ...opening, rows: [raisePole(height)] }));
}

function sign(db: WriteDb): void {
  granted(writeChange(db, { label: "Sign", ...opening, rows: [signatureFor(smallRoute())] }));
}

test("a journal of edits, undo and edits under one held key fits together", () => {
  withFile(smallRoute(), ({ db }) => {
    expect(brokenThroughout(db)).toBeNull();
    raise(db, 11, 12);
    granted(undo(db, opening));
    raise(db, 13);
    expect(brokenThroughout(db)).toBeNull();
  });
});

test("the first entry that was changed is named, with its label, author and time", () => {
  withFile(smallRoute(), ({ db }) => {
    raise(db, 11, 12, 13);
    db.run("UPDATE journal SET author = 'Bob' WHERE seq >= 2");
    expect(brokenProof(db)).toMatchObject({ code: "journal-broken", where: "journal 2" });
    expect(brokenProof(db)?.what).toContain('"Raise to 12" by Bob');
  });
});

test("an entry taken out, and the newest cut off, are both told", () => {
  withFile(smallRoute(), ({ db }) => {
    raise(db, 11, 12, 13);
    db.run("DELETE FROM journal WHERE seq = 3");
    expect(brokenProof(db)).toMatchObject({ where: "journal 3" });
    expect(brokenProof(db)?.what).toContain("up to entry 3");
    db.run("DELETE FROM journal WHERE seq = 1");
    expect(brokenProof(db)).toMatchObject({ where: "journal 1" });
  });
});

test("rows changed behind a signature are found on opening, and the file can still be looked into", () => {
  inScratch((path) => {
    const file = granted(createRouteFile(path, smallRoute(), opening));
    sign(file.db);
    raise(file.db, 11);
    expect(brokenProof(file.db)).toBeNull();
    file.db.run("UPDATE span SET note = 'moved' WHERE id = 'span-1'");
    expect(brokenProof(file.db)).toMatchObject({ code: "rows-changed", where: "signOff signOff-1" });
    file.close();
    expect(faultCode(openRouteFile(path, opening))).toBe("rows-changed");
    const looked = granted(lookInto(path, opening));
    expect(routeIn(looked).pole.size).toBe(smallRoute().pole.size + 1);
    looked.close();
  });
});

test("a row the journal touched that holds something else since is named", () => {
  withFile(smallRoute(), ({ db }) => {
    raise(db, 11);
    db.run("UPDATE pole SET above_ground_m = 30 WHERE id = ?", raisePole(11).id);
    expect(brokenProof(db)).toBeNull();
    expect(brokenThroughout(db)).toMatchObject({ code: "rows-changed", where: `pole ${raisePole(11).id}` });
  });
});

test("a signature nobody made here is found", () => {
  withFile(smallRoute(), ({ db }) => {
    sign(db);
    db.run(
      "INSERT INTO sign_off SELECT 'signOff-2', number + 1, stage, role, note, digest, \"by\", at_iso, reopened_by, reopened_iso, reopen_reason FROM sign_off",
    );
    expect(brokenProof(db)).toMatchObject({ code: "rows-changed" });
  });
});

test("a kept photo that was exchanged is found", () => {
  withFile(smallRoute(), ({ db }) => {
    keepFile(db, new Uint8Array([1, 2, 3]));
    expect(brokenThroughout(db)).toBeNull();
    db.run("UPDATE kept_file SET bytes = ?", new Uint8Array([1, 2, 4]));
    expect(brokenThroughout(db)).toMatchObject({ code: "rows-changed" });
  });
});

test("a file of before the chain is chained as it is found", () => {
  withVersion(17, (db) => {
    const pole = olderRoute().pole.get("pole-1");
    if (!pole) throw new Error("the older route has no pole");
    enterEdit(db, { table: "pole", id: pole.id, before: { ...pole, aboveGroundM: 3 }, after: pole });
    granted(climb(db, null, 17, opening.atIso));
    expect(brokenThroughout(db)).toBeNull();
    granted(undo(db, opening));
    expect(brokenThroughout(db)).toBeNull();
  });
});

const widens: Migration = {
  version: newestVersion + 1,
  up: (db) => db.exec("ALTER TABLE pole ADD COLUMN lean_rad REAL NOT NULL DEFAULT 0"),
};

/** As a later migration does to what the journal remembers of poles. */
const lifts: Migration = {
  ...widens,
  up(db) {
    widens.up(db);
    db.run(`UPDATE journal SET rows_json = replace(rows_json, '"aboveGroundM"', '"leanRad":0,"aboveGroundM"')`);
  },
};

test("a climb keeps what a signature proves, and what did not fit before it stays told", () => {
  const climbOn = (db: WriteDb) => granted(climb(db, null, newestVersion, opening.atIso, [...migrations, lifts]));
  withFile(smallRoute(), ({ db }) => {
    sign(db);
    raise(db, 11);
    climbOn(db);
    expect(brokenProof(db)).toBeNull();
    db.run("UPDATE pole SET lean_rad = 0.1 WHERE id <> ?", raisePole(11).id);
    expect(brokenProof(db)).toMatchObject({ code: "rows-changed" });
  });
  withFile(smallRoute(), ({ db }) => {
    raise(db, 11, 12);
    db.run("UPDATE journal SET label = 'Nothing' WHERE seq = 2");
    const before = brokenProof(db);
    climbOn(db);
    expect(brokenProof(db)?.what).toBe(before?.what);
  });
});

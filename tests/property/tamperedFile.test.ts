import fc from "fast-check";
import { expect, test } from "vitest";
import { tableNames } from "../../core/model/tables.ts";
import { shapeOf } from "../../db/columns.ts";
import type { WriteDb } from "../../db/driver.ts";
import { brokenProof } from "../../db/proof.ts";
import { writeChange } from "../../db/writeChange.ts";
import { granted, opening, routeIn, withFile } from "../contract/db/scratch.ts";
import { raisePole, signatureFor, smallRoute } from "../contract/db/smallRoute.ts";

/** A file with edits before and after a signature. */
function withSigned(work: (db: WriteDb) => void): void {
  withFile(smallRoute(), (file) => {
    const edit = (number: number) => ({ label: `Add pole ${number}`, ...opening, rows: [raisePole(number)] });
    for (const number of [11, 12]) granted(writeChange(file.db, edit(number)));
    granted(writeChange(file.db, { label: "Sign", ...opening, rows: [signatureFor(routeIn(file))] }));
    for (const number of [13, 14]) granted(writeChange(file.db, edit(number)));
    file.db.exec("PRAGMA ignore_check_constraints = ON; PRAGMA foreign_keys = OFF");
    expect(brokenProof(file.db)).toBeNull();
    work(file.db);
  });
}

/** Changes a file by other means, looks, and puts it back. */
function lookAfter(db: WriteDb, tamper: () => void) {
  db.exec("BEGIN");
  tamper();
  const broken = brokenProof(db);
  db.exec("ROLLBACK");
  return broken;
}

test("any letter of the journal that is changed is found", () => {
  withSigned((db) => {
    const columns = ["label", "author", "at_iso", "rows_json", "hash"];
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5 }), fc.constantFrom(...columns), fc.nat(), (seq, column, place) => {
        const text = String(db.get(`SELECT ${column} AS text FROM journal WHERE seq = ?`, seq)?.text);
        const at = place % text.length;
        const other = `${text.slice(0, at)}${text[at] === "0" ? "1" : "0"}${text.slice(at + 1)}`;
        const broken = lookAfter(db, () => db.run(`UPDATE journal SET ${column} = ? WHERE seq = ?`, other, seq));
        expect(broken).toMatchObject({ code: "journal-broken", where: `journal ${seq}` });
      }),
      { numRuns: 60 },
    );
  });
});

test("any value of any row that is changed, added or taken out behind a signature is found", () => {
  const filled = tableNames.filter((table) => smallRoute()[table].size > 0);
  withSigned((db) => {
    fc.assert(
      fc.property(fc.constantFrom(...filled), fc.nat(), fc.nat(), (table, row, place) => {
        const { name, columns } = shapeOf(table);
        const ids = db.all(`SELECT id FROM "${name}"`);
        const id = ids[row % ids.length]?.id ?? null;
        const column = columns[place % columns.length];
        const value = column?.type === "TEXT" ? "changed" : 7.5e5;
        expect(
          lookAfter(db, () => db.run(`UPDATE "${name}" SET "${column?.name}" = ? WHERE id = ?`, value, id)),
        ).toMatchObject({
          code: "rows-changed",
        });
        expect(lookAfter(db, () => db.run(`DELETE FROM "${name}" WHERE id = ?`, id))).toMatchObject({
          code: "rows-changed",
        });
      }),
      { numRuns: 60 },
    );
  });
});

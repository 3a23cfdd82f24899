import { expect, test } from "vitest";
import { references } from "../../../core/model/references.ts";
import { type TableName, tableNames } from "../../../core/model/tables.ts";
import { shapeOf, sqlName } from "../../../db/columns.ts";
import { withFile } from "./scratch.ts";
import { smallRoute } from "./smallRoute.ts";

test("every table of the model has the columns, types and nulls of its table in the file", () => {
  withFile(smallRoute(), ({ db }) => {
    const inFile = Object.fromEntries(
      tableNames.map((table) => [
        table,
        db
          .all(`PRAGMA table_info("${sqlName(table)}")`)
          .map(({ name, type, notnull }) => ({ name, type, nullable: notnull === 0 })),
      ]),
    );
    const inModel = Object.fromEntries(
      tableNames.map((table) => [
        table,
        shapeOf(table).columns.map(({ name, type, nullable }) => ({ name, type, nullable })),
      ]),
    );
    expect(inFile).toEqual(inModel);
  });
});

test("the file's foreign keys are the model's references, all looked at when an edit is kept", () => {
  withFile(smallRoute(), ({ db }) => {
    for (const table of tableNames) {
      const keys = db.all(`PRAGMA foreign_key_list("${sqlName(table)}")`);
      expect(Object.fromEntries(keys.map((key) => [key.from, key.table])), table).toEqual(referencesInSql(table));
    }
    const tablesWithKeys = db.all("SELECT sql FROM sqlite_schema WHERE type = 'table'").map(({ sql }) => String(sql));
    for (const sql of tablesWithKeys) {
      const count = (text: RegExp) => (sql.match(text) ?? []).length;
      expect(count(/DEFERRABLE INITIALLY DEFERRED/g)).toBe(count(/REFERENCES/g));
    }
  });
});

test("every reference has an index, every table is strict, and there is no table beside the model's but the journal and kept files", () => {
  withFile(smallRoute(), ({ db }) => {
    const list = db.all(
      "SELECT name, strict FROM pragma_table_list WHERE schema = 'main' AND name NOT LIKE 'sqlite_%'",
    );
    expect(list.filter(({ strict }) => strict !== 1)).toEqual([]);
    expect(list.map(({ name }) => name).sort()).toEqual(
      ["journal", "journal_climb", "journal_head", "kept_file", ...tableNames.map(sqlName)].sort(),
    );
    for (const table of tableNames) {
      for (const column of Object.keys(references[table])) {
        const indexed = db.all(
          "SELECT 1 FROM pragma_index_list(?) AS list, pragma_index_info(list.name) AS part WHERE part.seqno = 0 AND part.name = ?",
          sqlName(table),
          sqlName(column),
        );
        expect(indexed.length, `${table}.${column}`).toBeGreaterThan(0);
      }
    }
  });
});

function referencesInSql(table: TableName): Record<string, string> {
  return Object.fromEntries(
    Object.entries(references[table]).map(([column, parent]) => [sqlName(column), sqlName(parent)]),
  );
}

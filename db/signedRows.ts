import { digestOf, type PlainRow, plainText } from "../core/closeout/digest.ts";
import type { Fault } from "../core/model/result.ts";
import { climbsOf, lookMend } from "./brokenChain.ts";
import type { ReadDb } from "./driver.ts";

/** Every row of a file by table and id, whatever its version. */
type PlainTables = Record<string, Map<string, PlainRow>>;
type PlainChange = {
  readonly table: string;
  readonly id: string;
  readonly before: PlainRow | null;
  readonly after: PlainRow | null;
};

/** The digests of the rows as they were when each signature was made, taken back from the rows that are there by what was edited since. */
type SignedRows = { readonly digests: Readonly<Record<string, string>>; readonly fault: Fault | null };

/**
 * Takes the rows back, edit by edit, to where the oldest signature was made, or to the start of the journal.
 *
 * The fault tells of the first row that does not hold what the journal says it holds; the digests are then those of before.
 *
 * @param isWhole  back to the start, to hold every row the journal touched against it
 */
export function takeBack(db: ReadDb, isWhole = false): SignedRows {
  const tables = plainTables(db);
  const unseen = new Set(tables.signOff?.keys() ?? []);
  const digests: Record<string, string> = {};
  if (unseen.size === 0 && !isWhole) return { digests, fault: null };
  const newest = Number(db.get("SELECT max(seq) AS seq FROM journal")?.seq ?? 0);
  for (let seq = newest; seq > 0 && (isWhole || unseen.size > 0); seq -= 1) {
    const changes = changesOf(db, seq);
    for (const change of changes.toReversed()) {
      const rows = tables[change.table] ?? new Map<string, PlainRow>();
      tables[change.table] = rows;
      if (!isSame(rows.get(change.id) ?? null, change.after)) return { digests, fault: rowChanged(change, seq) };
      if (change.before) rows.set(change.id, change.before);
      else rows.delete(change.id);
    }
    for (const { table, id, before } of changes)
      if (table === "signOff" && before === null && unseen.delete(id)) digests[id] = digestOf(tables);
  }
  const [astray] = unseen;
  return {
    digests,
    fault: astray === undefined ? null : unsigned(`The signature ${astray} is not in the journal`, astray),
  };
}

/** What of a file's signatures does not fit its rows; null where each stands for the rows that were signed. */
export function brokenSignature(db: ReadDb, { digests, fault }: SignedRows): Fault | null {
  if (fault) return fault;
  const climbed: Readonly<Record<string, string>> = Object.assign(
    {},
    ...climbsOf(db).map((climb): unknown => JSON.parse(climb.signaturesJson)),
  );
  for (const { id, stage, by, atIso, digest } of db.all(
    'SELECT id, stage, "by", at_iso AS atIso, digest FROM sign_off',
  )) {
    if (digests[String(id)] === (climbed[String(id)] ?? digest)) continue;
    return unsigned(`The rows are not those ${by} signed for as ${stage} at ${atIso}`, String(id));
  }
  return null;
}

function rowChanged({ table, id }: PlainChange, seq: number): Fault {
  return {
    code: "rows-changed",
    what: `The ${table} ${id} does not hold what entry ${seq} of the journal left: it was changed, not by this program.`,
    where: `${table} ${id}`,
    mend: lookMend,
  };
}

function unsigned(what: string, id: string): Fault {
  return {
    code: "rows-changed",
    what: `${what}: the file was changed, not by this program.`,
    where: `signOff ${id}`,
    mend: lookMend,
  };
}

function changesOf(db: ReadDb, seq: number): PlainChange[] {
  const found = db.get("SELECT rows_json AS rows FROM journal WHERE seq = ?", seq);
  return JSON.parse(String(found?.rows ?? "[]")) as PlainChange[]; // written by this program: the chain has just been verified
}

function isSame(a: PlainRow | null, b: PlainRow | null): boolean {
  return a === null || b === null ? a === b : plainText(a) === plainText(b);
}

function plainTables(db: ReadDb): PlainTables {
  const tables: PlainTables = {};
  const named = db.all("SELECT name FROM sqlite_schema WHERE type = 'table'").map(({ name }) => String(name));
  for (const name of named.filter((one) => !/^(journal|kept_file|sqlite_)/.test(one))) {
    const columns = db.all(`PRAGMA table_info("${name}")`).map((column) => modelName(String(column.name)));
    const rows = new Map<string, PlainRow>();
    for (const values of db.arrays(`SELECT * FROM "${name}"`)) {
      const row: PlainRow = Object.fromEntries(columns.map((column, at) => [column, values[at] ?? null]));
      rows.set(String(row.id), row);
    }
    tables[modelName(name)] = rows;
  }
  return tables;
}

/** The name the model knows a table or column by: offset_m is offsetM. */
function modelName(name: string): string {
  return name.replace(/_([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
}

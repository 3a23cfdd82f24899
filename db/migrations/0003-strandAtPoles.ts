import type { WriteDb } from "../driver.ts";

export const version = 3;

/** How strand is held at the poles between its dead ends: until now every span hung by itself. */
export function up(db: WriteDb): void {
  const column = "TEXT NOT NULL DEFAULT 'clamped' CHECK";
  db.exec(`ALTER TABLE strand_section ADD COLUMN at_poles ${column} (at_poles IN ('clamped', 'slipping'))`);
  db.exec(`ALTER TABLE settings ADD COLUMN strand_at_poles ${column} (strand_at_poles IN ('clamped', 'slipping'))`);
  liftJournal(db);
}

type JsonRow = Readonly<Record<string, unknown>>;
type JsonChange = { readonly table: string; readonly before: JsonRow | null; readonly after: JsonRow | null };

/** Columns that rows of version 2 lack, with what they stand at in version 3. */
const added: Readonly<Record<string, JsonRow>> = {
  strandSection: { atPoles: "clamped" },
  settings: { strandAtPoles: "clamped" },
};

/** Brings the rows the journal remembers to the columns of version 3, so that edits made before can still be undone. */
function liftJournal(db: WriteDb): void {
  for (const { seq, rows } of db.all("SELECT seq, rows_json AS rows FROM journal ORDER BY seq")) {
    if (typeof seq !== "number" || typeof rows !== "string") continue;
    const changes = JSON.parse(rows) as readonly JsonChange[]; // written by this program, and looked at again when it is undone
    if (!changes.some(({ table }) => table in added)) continue;
    db.run("UPDATE journal SET rows_json = ? WHERE seq = ?", JSON.stringify(changes.map(lifted)), seq);
  }
}

function lifted(change: JsonChange): JsonChange {
  const lift = (row: JsonRow | null) => row && { ...row, ...added[change.table] };
  return { ...change, before: lift(change.before), after: lift(change.after) };
}

import type { WriteDb } from "../driver.ts";

export const version = 4;

/**
 * Reach and difference between units of an optical class, taps that let light go on, and whether fiber beyond a cut is used again. A class of
 * before allows the difference between its own two limits, and 20 km.
 */
export function up(db: WriteDb): void {
  const positive = (name: string) => `REAL NOT NULL DEFAULT 20000 CHECK (${name} > 0 AND ${name} < 9e999)`;
  db.exec(`
    ALTER TABLE optical_class ADD COLUMN differential_db ${positive("differential_db")};
    ALTER TABLE optical_class ADD COLUMN reach_m ${positive("reach_m")};
    UPDATE optical_class SET differential_db = max(max_loss_db - min_loss_db, 1);
    ALTER TABLE splitter_type ADD COLUMN through_loss_db REAL NOT NULL DEFAULT 0
      CHECK (through_loss_db >= 0 AND through_loss_db < 9e999);
    ALTER TABLE settings ADD COLUMN dead_length TEXT NOT NULL DEFAULT 'left' CHECK (dead_length IN ('left', 'reused'));
  `);
  liftJournal(db);
}

type JsonRow = Readonly<Record<string, unknown>>;
type JsonChange = { readonly table: string; readonly before: JsonRow | null; readonly after: JsonRow | null };

/** Columns that rows of version 3 lack, with what they stand at in version 4. */
const added: Readonly<Record<string, (row: JsonRow) => JsonRow>> = {
  opticalClass: ({ minLossDb, maxLossDb }) => ({
    differentialDb: Math.max(Number(maxLossDb) - Number(minLossDb), 1),
    reachM: 20000,
  }),
  splitterType: () => ({ throughLossDb: 0 }),
  settings: () => ({ deadLength: "left" }),
};

/** Brings the rows the journal remembers to the columns of version 4, so that edits made before can still be undone. */
function liftJournal(db: WriteDb): void {
  for (const { seq, rows } of db.all("SELECT seq, rows_json AS rows FROM journal ORDER BY seq")) {
    if (typeof seq !== "number" || typeof rows !== "string") continue;
    const changes = JSON.parse(rows) as readonly JsonChange[]; // written by this program, and looked at again when it is undone
    if (!changes.some(({ table }) => table in added)) continue;
    db.run("UPDATE journal SET rows_json = ? WHERE seq = ?", JSON.stringify(changes.map(lifted)), seq);
  }
}

function lifted(change: JsonChange): JsonChange {
  const lift = (row: JsonRow | null) => row && { ...row, ...added[change.table]?.(row) };
  return { ...change, before: lift(change.before), after: lift(change.after) };
}

import type { WriteDb } from "../driver.ts";

export const version = 4;

/** Voltage to ground that limits against supply were taken to cover until now, V. */
const coveredV = 8700;

/** What the shipped rows against supply ask more for each volt beyond, m: 0.4 in a kV at the pole, three quarters of it in the span. */
const shipped = [
  { id: "nesc-supplyAtPole", limitM: 1.016, moreMPerV: 0.00001016 },
  { id: "nesc-supplyInSpan", limitM: 0.762, moreMPerV: 0.00000762 },
];

/** Limits against supply say which voltage they cover, and how much more is asked beyond. */
export function up(db: WriteDb): void {
  for (const column of ["covers_v", "more_m_per_v"])
    db.exec(
      `ALTER TABLE clearance_limit ADD COLUMN ${column} REAL NOT NULL DEFAULT 0 CHECK (${column} >= 0 AND ${column} < 9e999)`,
    );
  db.run("UPDATE clearance_limit SET covers_v = ? WHERE surface IN ('supplyAtPole', 'supplyInSpan')", coveredV);
  for (const { id, limitM, moreMPerV } of shipped)
    db.run("UPDATE clearance_limit SET more_m_per_v = ? WHERE id = ? AND limit_m = ?", moreMPerV, id, limitM);
  liftJournal(db);
}

type JsonRow = Readonly<Record<string, unknown>>;
type JsonChange = { readonly table: string; readonly before: JsonRow | null; readonly after: JsonRow | null };

/** Brings the rows the journal remembers to the columns of version 4, so that edits made before can still be undone. */
function liftJournal(db: WriteDb): void {
  for (const { seq, rows } of db.all("SELECT seq, rows_json AS rows FROM journal ORDER BY seq")) {
    if (typeof seq !== "number" || typeof rows !== "string") continue;
    const changes = JSON.parse(rows) as readonly JsonChange[]; // written by this program, and looked at again when it is undone
    if (!changes.some(({ table }) => table === "clearanceLimit")) continue;
    db.run("UPDATE journal SET rows_json = ? WHERE seq = ?", JSON.stringify(changes.map(lifted)), seq);
  }
}

function lifted(change: JsonChange): JsonChange {
  if (change.table !== "clearanceLimit") return change;
  return { ...change, before: lift(change.before), after: lift(change.after) };
}

/** A remembered row as the climb makes the one that stands: as its own figures say. */
function lift(row: JsonRow | null): JsonRow | null {
  if (row === null) return null;
  const isSupply = row.surface === "supplyAtPole" || row.surface === "supplyInSpan";
  const known = shipped.find(({ id, limitM }) => id === row.id && limitM === row.limitM);
  return { ...row, coversV: isSupply ? coveredV : 0, moreMPerV: known?.moreMPerV ?? 0 };
}

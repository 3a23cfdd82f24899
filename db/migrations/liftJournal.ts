import type { WriteDb } from "../driver.ts";

/** A row as the journal remembers it. */
export type JsonRow = Readonly<Record<string, unknown>>;

type JsonChange = { readonly table: string; readonly before: JsonRow | null; readonly after: JsonRow | null };

/**
 * Brings rows the journal remembers to the columns of a new version, so that edits made before can still be undone.
 *
 * @param lifts by table: the row with the columns it lacks, standing at what the climb gives them
 */
export function liftJournal(db: WriteDb, lifts: Readonly<Record<string, (row: JsonRow) => JsonRow>>): void {
  for (const { seq, rows } of db.all("SELECT seq, rows_json AS rows FROM journal ORDER BY seq")) {
    if (typeof seq !== "number" || typeof rows !== "string") continue;
    const changes = JSON.parse(rows) as readonly JsonChange[]; // written by this program, and looked at again when it is undone
    if (!changes.some(({ table }) => table in lifts)) continue;
    const lifted = changes.map((change) => {
      const lift = (row: JsonRow | null) => row && (lifts[change.table]?.(row) ?? row);
      return { ...change, before: lift(change.before), after: lift(change.after) };
    });
    db.run("UPDATE journal SET rows_json = ? WHERE seq = ?", JSON.stringify(lifted), seq);
  }
}

import type { WriteDb } from "../../driver.ts";

type JsonRow = Readonly<Record<string, unknown>>;
type JsonChange = { readonly table: string; readonly before: JsonRow | null; readonly after: JsonRow | null };

/** Columns that rows of version 1 lack, with what they stand at in version 2. */
const added: Readonly<Record<string, JsonRow>> = {
  settings: {
    strengthSetId: "strength-own",
    groundSurface: "pedestrian",
    unguyedAngleRad: 0.0872664625997165,
    usableFromM: 5.4864,
    poleTopGapM: 0.1524,
    sagMatchFrac: 0.25,
    dropSagFrac: 0.03,
  },
  clearanceLimit: { condition: "any" },
  livingUnit: { groundM: null },
};

/**
 * Brings the rows the journal remembers to the columns of version 2, so that edits made before can still be undone. The
 * tension limit left the settings: an edit that changed it alone undoes to nothing.
 */
export function liftJournal(db: WriteDb): void {
  for (const { seq, rows } of db.all("SELECT seq, rows_json AS rows FROM journal ORDER BY seq")) {
    if (typeof seq !== "number" || typeof rows !== "string") continue;
    const changes = JSON.parse(rows) as readonly JsonChange[]; // written by this program, and looked at again when it is undone
    if (!changes.some(({ table }) => table in added)) continue;
    db.run("UPDATE journal SET rows_json = ? WHERE seq = ?", JSON.stringify(changes.map(lifted)), seq);
  }
}

function lifted(change: JsonChange): JsonChange {
  const more = added[change.table];
  if (!more) return change;
  const lift = (row: JsonRow | null) => {
    if (row === null) return null;
    const { maxStrandFrac: _gone, ...kept } = row;
    return { ...kept, ...more };
  };
  return { ...change, before: lift(change.before), after: lift(change.after) };
}

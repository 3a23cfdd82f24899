import type { WriteDb } from "../driver.ts";
import { type JsonRow, liftJournal } from "./liftJournal.ts";

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
  liftJournal(db, { clearanceLimit: lifted });
}

/** A remembered row as the climb makes the one that stands: as its own figures say. */
function lifted(row: JsonRow): JsonRow {
  const isSupply = row.surface === "supplyAtPole" || row.surface === "supplyInSpan";
  const known = shipped.find(({ id, limitM }) => id === row.id && limitM === row.limitM);
  return { ...row, coversV: isSupply ? coveredV : 0, moreMPerV: known?.moreMPerV ?? 0 };
}

import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 20;

const weights = [
  { key: "newLineMm", column: "new_line_mm", choices: ["0.35", "0.5", "0.7"], usual: "0.5" },
  { key: "existingLineMm", column: "existing_line_mm", choices: ["0.25", "0.35", "0.5"], usual: "0.35" },
  { key: "dimensionLineMm", column: "dimension_line_mm", choices: ["0.13", "0.18", "0.25"], usual: "0.18" },
  { key: "markLineMm", column: "mark_line_mm", choices: ["0.25", "0.35", "0.5"], usual: "0.35" },
  { key: "frameLineMm", column: "frame_line_mm", choices: ["0.35", "0.5", "0.7"], usual: "0.5" },
];

/** How a company's drawings look: weights of lines by their meaning, names of layers, a logo. A file of before looks as it did. */
export function up(db: WriteDb): void {
  for (const { column, choices, usual } of weights) {
    const listed = choices.map((one) => `'${one}'`).join(", ");
    db.exec(
      `ALTER TABLE settings ADD COLUMN ${column} TEXT NOT NULL DEFAULT '${usual}' CHECK (${column} IN (${listed}))`,
    );
  }
  db.exec("ALTER TABLE settings ADD COLUMN layer_names TEXT NOT NULL DEFAULT '' CHECK (length(layer_names) <= 2000)");
  db.exec("ALTER TABLE settings ADD COLUMN logo TEXT NOT NULL DEFAULT '' CHECK (length(logo) <= 2000)");
  const usual = Object.fromEntries(weights.map((one) => [one.key, one.usual]));
  liftJournal(db, { settings: (row) => ({ ...row, ...usual, layerNames: "", logo: "" }) });
}

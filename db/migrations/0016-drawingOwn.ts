import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 16;

const papers = ["usual", "ANSI A", "ANSI B", "ANSI C", "ANSI D", "A4", "A3", "A2", "A1"];

/** A company's own for its drawings: notes, a line of the title block, sheets it leaves out, paper. A file of before has none of its own. */
export function up(db: WriteDb): void {
  db.exec(`
    ALTER TABLE settings ADD COLUMN general_notes TEXT NOT NULL DEFAULT '' CHECK (length(general_notes) <= 2000);
    ALTER TABLE settings ADD COLUMN title_line TEXT NOT NULL DEFAULT '' CHECK (length(title_line) <= 2000);
    ALTER TABLE settings ADD COLUMN sheets_left_out TEXT NOT NULL DEFAULT '' CHECK (length(sheets_left_out) <= 2000);
    ALTER TABLE settings ADD COLUMN paper TEXT NOT NULL DEFAULT 'usual'
      CHECK (paper IN (${papers.map((one) => `'${one}'`).join(", ")}));
  `);
  const own = { generalNotes: "", titleLine: "", sheetsLeftOut: "", paper: "usual" };
  liftJournal(db, { settings: (row) => ({ ...row, ...own }) });
}

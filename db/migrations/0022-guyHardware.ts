import type { WriteDb } from "../driver.ts";
import { recreate, withWord } from "./recreate.ts";

export const version = 22;

/**
 * Hardware that goes with a guy. The bill counted an anchor for each guy by itself, without a price; a file of before that has hardware
 * keeps that anchor as a row of its catalogue, without a price until its owner sets one.
 */
export function up(db: WriteDb): void {
  recreate(db, "hardware", (sql) => withWord(sql, "deadEnd", "guy"));
  db.exec(`
    INSERT INTO hardware (
      id, name, unit, per, quantity, cost, note, basis_document, basis_clause, basis_edition, basis_mark
    )
    SELECT 'hardware-anchor', 'Anchor with rod', 'piece', 'guy', 1, 0, 'kind and length to suit the ground',
      'trade practice', 'quantity and price are the company''s to set', '', 'practice'
    WHERE EXISTS (SELECT 1 FROM hardware) AND NOT EXISTS (SELECT 1 FROM hardware WHERE id = 'hardware-anchor')
  `);
}

import { basisColumns, lineSurfaces } from "./sqlWords.ts";

/** Clearance limits by case and over more surfaces; strength limits. */
export const limitTables = `
CREATE TABLE clearance_limit_next (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  clearance_set_id TEXT NOT NULL REFERENCES clearance_set (id) DEFERRABLE INITIALLY DEFERRED,
  surface TEXT NOT NULL CHECK (surface IN (
    ${lineSurfaces},
    'dropRoad', 'dropDriveway', 'buildingOver', 'buildingBeside', 'walkedRoofOver',
    'signOver', 'signBeside', 'litSignBeside', 'walkedSignOver',
    'supplyAtPole', 'supplyInSpan', 'neutralAtPole', 'neutralInSpan', 'communicationAtPole', 'communicationInSpan'
  )),
  condition TEXT NOT NULL CHECK (condition IN ('any', 'stringing', 'hot', 'iced')),
  limit_m REAL NOT NULL CHECK (limit_m > 0 AND limit_m < 9e999),
${basisColumns}
) STRICT;
INSERT INTO clearance_limit_next
  SELECT id, clearance_set_id, surface, 'any', limit_m, basis_document, basis_clause, basis_edition, basis_mark
  FROM clearance_limit ORDER BY rowid;
DROP TABLE clearance_limit;
ALTER TABLE clearance_limit_next RENAME TO clearance_limit;
CREATE INDEX clearance_limit_clearance_set_id ON clearance_limit (clearance_set_id);

CREATE TABLE strength_set (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
${basisColumns}
) STRICT;

CREATE TABLE strength_limit (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  strength_set_id TEXT NOT NULL REFERENCES strength_set (id) DEFERRABLE INITIALLY DEFERRED,
  part TEXT NOT NULL CHECK (part IN ('strand', 'pullDifference', 'guy', 'anchor')),
  condition TEXT NOT NULL CHECK (condition IN ('stringing', 'hot', 'iced', 'loaded')),
  limit_frac REAL NOT NULL CHECK (limit_frac BETWEEN 0 AND 1),
${basisColumns}
) STRICT;
CREATE INDEX strength_limit_strength_set_id ON strength_limit (strength_set_id);
`;

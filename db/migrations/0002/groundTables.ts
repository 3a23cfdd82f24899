import { lineSurfaces } from "./sqlWords.ts";

/** What lies under and beside the line, what holds its poles, and what a drop passes over. */
export const groundTables = `
CREATE TABLE crossing_next (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  span_id TEXT NOT NULL REFERENCES span (id) DEFERRABLE INITIALLY DEFERRED,
  name TEXT NOT NULL CHECK (length(name) <= 2000),
  surface TEXT NOT NULL CHECK (surface IN (${lineSurfaces})),
  offset_m REAL NOT NULL CHECK (offset_m >= 0 AND offset_m < 9e999),
  width_m REAL NOT NULL CHECK (width_m > 0 AND width_m < 9e999),
  surface_m REAL CHECK (abs(surface_m) < 9e999)
) STRICT;
INSERT INTO crossing_next SELECT id, span_id, name, surface, offset_m, width_m, surface_m FROM crossing ORDER BY rowid;
DROP TABLE crossing;
ALTER TABLE crossing_next RENAME TO crossing;
CREATE INDEX crossing_span_id ON crossing (span_id);

CREATE TABLE ground_point (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  span_id TEXT NOT NULL REFERENCES span (id) DEFERRABLE INITIALLY DEFERRED,
  offset_m REAL NOT NULL CHECK (offset_m >= 0 AND offset_m < 9e999),
  ground_m REAL NOT NULL CHECK (abs(ground_m) < 9e999)
) STRICT;
CREATE INDEX ground_point_span_id ON ground_point (span_id);

CREATE TABLE structure (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  span_id TEXT NOT NULL REFERENCES span (id) DEFERRABLE INITIALLY DEFERRED,
  name TEXT NOT NULL CHECK (length(name) <= 2000),
  kind TEXT NOT NULL CHECK (kind IN ('building', 'walkedRoof', 'sign', 'litSign', 'walkedSign')),
  offset_m REAL NOT NULL CHECK (offset_m >= 0 AND offset_m < 9e999),
  length_m REAL NOT NULL CHECK (length_m > 0 AND length_m < 9e999),
  beside_m REAL NOT NULL CHECK (beside_m >= 0 AND beside_m < 9e999),
  side TEXT NOT NULL CHECK (side IN ('left', 'right')),
  height_m REAL NOT NULL CHECK (height_m > 0 AND height_m < 9e999)
) STRICT;
CREATE INDEX structure_span_id ON structure (span_id);

CREATE TABLE wire_sag (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  span_id TEXT NOT NULL REFERENCES span (id) DEFERRABLE INITIALLY DEFERRED,
  owner TEXT NOT NULL CHECK (length(owner) <= 2000),
  kind TEXT NOT NULL CHECK (kind IN ('communication', 'neutral', 'secondary', 'primary')),
  sag_m REAL NOT NULL CHECK (sag_m > 0 AND sag_m < 9e999)
) STRICT;
CREATE INDEX wire_sag_span_id ON wire_sag (span_id);

CREATE TABLE guy (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  pole_id TEXT NOT NULL REFERENCES pole (id) DEFERRABLE INITIALLY DEFERRED,
  strand_type_id TEXT NOT NULL REFERENCES strand_type (id) DEFERRABLE INITIALLY DEFERRED,
  height_m REAL NOT NULL CHECK (height_m > 0 AND height_m < 9e999),
  lead_m REAL NOT NULL CHECK (lead_m > 0 AND lead_m < 9e999),
  direction_rad REAL NOT NULL CHECK (abs(direction_rad) < 9e999),
  anchor_n REAL CHECK (anchor_n > 0 AND anchor_n < 9e999),
  note TEXT NOT NULL CHECK (length(note) <= 2000)
) STRICT;
CREATE INDEX guy_pole_id ON guy (pole_id);
CREATE INDEX guy_strand_type_id ON guy (strand_type_id);

ALTER TABLE living_unit ADD COLUMN ground_m REAL CHECK (abs(ground_m) < 9e999);

CREATE TABLE drop_crossing (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  living_unit_id TEXT NOT NULL REFERENCES living_unit (id) DEFERRABLE INITIALLY DEFERRED,
  name TEXT NOT NULL CHECK (length(name) <= 2000),
  surface TEXT NOT NULL CHECK (surface IN (${lineSurfaces})),
  from_unit_m REAL NOT NULL CHECK (from_unit_m >= 0 AND from_unit_m < 9e999),
  width_m REAL NOT NULL CHECK (width_m > 0 AND width_m < 9e999),
  surface_m REAL CHECK (abs(surface_m) < 9e999)
) STRICT;
CREATE INDEX drop_crossing_living_unit_id ON drop_crossing (living_unit_id);
`;

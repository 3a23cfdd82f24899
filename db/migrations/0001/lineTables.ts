/** Poles, strand, cable and what hangs on them, as version 1 of the route file has them. */
export const lineTables = `
CREATE TABLE pole (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  tag TEXT NOT NULL CHECK (length(trim(tag)) BETWEEN 1 AND 200),
  east_m REAL NOT NULL CHECK (abs(east_m) < 9e999),
  north_m REAL NOT NULL CHECK (abs(north_m) < 9e999),
  ground_m REAL CHECK (abs(ground_m) < 9e999),
  above_ground_m REAL CHECK (above_ground_m > 0 AND above_ground_m < 9e999),
  pole_class TEXT NOT NULL CHECK (length(pole_class) <= 2000),
  owner TEXT NOT NULL CHECK (length(owner) <= 2000),
  line TEXT NOT NULL CHECK (length(line) <= 2000),
  "order" INTEGER NOT NULL CHECK ("order" >= 0),
  terminal_allowed INTEGER NOT NULL CHECK (terminal_allowed IN (0, 1)),
  note TEXT NOT NULL CHECK (length(note) <= 2000)
) STRICT;

CREATE TABLE attachment (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  pole_id TEXT NOT NULL REFERENCES pole (id) DEFERRABLE INITIALLY DEFERRED,
  owner TEXT NOT NULL CHECK (length(owner) <= 2000),
  kind TEXT NOT NULL CHECK (kind IN (
    'ourStrand', 'communication', 'neutral', 'secondary', 'primary', 'equipment', 'streetLight', 'riser'
  )),
  height_m REAL NOT NULL CHECK (height_m > 0 AND height_m < 9e999),
  voltage_v REAL NOT NULL CHECK (voltage_v >= 0 AND voltage_v < 9e999),
  note TEXT NOT NULL CHECK (length(note) <= 2000)
) STRICT;
CREATE INDEX attachment_pole_id ON attachment (pole_id);

CREATE TABLE span (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  from_pole_id TEXT NOT NULL REFERENCES pole (id) DEFERRABLE INITIALLY DEFERRED,
  to_pole_id TEXT NOT NULL REFERENCES pole (id) DEFERRABLE INITIALLY DEFERRED,
  length_m REAL NOT NULL CHECK (length_m > 0 AND length_m < 9e999),
  strand_section_id TEXT REFERENCES strand_section (id) DEFERRABLE INITIALLY DEFERRED,
  origin TEXT NOT NULL CHECK (origin IN ('surveyed', 'ordered', 'inferred', 'drawn')),
  note TEXT NOT NULL CHECK (length(note) <= 2000)
) STRICT;
CREATE INDEX span_from_pole_id ON span (from_pole_id);
CREATE INDEX span_to_pole_id ON span (to_pole_id);
CREATE INDEX span_strand_section_id ON span (strand_section_id);

CREATE TABLE crossing (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  span_id TEXT NOT NULL REFERENCES span (id) DEFERRABLE INITIALLY DEFERRED,
  name TEXT NOT NULL CHECK (length(name) <= 2000),
  surface TEXT NOT NULL CHECK (surface IN ('road', 'driveway', 'rail', 'water', 'pedestrian', 'field')),
  offset_m REAL NOT NULL CHECK (offset_m >= 0 AND offset_m < 9e999),
  width_m REAL NOT NULL CHECK (width_m > 0 AND width_m < 9e999),
  surface_m REAL CHECK (abs(surface_m) < 9e999)
) STRICT;
CREATE INDEX crossing_span_id ON crossing (span_id);

CREATE TABLE strand_section (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  strand_type_id TEXT NOT NULL REFERENCES strand_type (id) DEFERRABLE INITIALLY DEFERRED,
  stringing_sag_frac REAL NOT NULL CHECK (stringing_sag_frac BETWEEN 0 AND 1),
  stringing_deg_c REAL NOT NULL CHECK (abs(stringing_deg_c) < 9e999)
) STRICT;
CREATE INDEX strand_section_strand_type_id ON strand_section (strand_type_id);

CREATE TABLE cable (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  cable_type_id TEXT NOT NULL REFERENCES cable_type (id) DEFERRABLE INITIALLY DEFERRED,
  from_closure_id TEXT REFERENCES closure (id) DEFERRABLE INITIALLY DEFERRED,
  reel_length_m REAL NOT NULL CHECK (reel_length_m > 0 AND reel_length_m < 9e999)
) STRICT;
CREATE INDEX cable_cable_type_id ON cable (cable_type_id);
CREATE INDEX cable_from_closure_id ON cable (from_closure_id);

CREATE TABLE cable_run (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  cable_id TEXT NOT NULL REFERENCES cable (id) DEFERRABLE INITIALLY DEFERRED,
  span_id TEXT NOT NULL REFERENCES span (id) DEFERRABLE INITIALLY DEFERRED,
  sequence INTEGER NOT NULL CHECK (sequence > 0),
  reversed INTEGER NOT NULL CHECK (reversed IN (0, 1))
) STRICT;
CREATE INDEX cable_run_cable_id ON cable_run (cable_id);
CREATE INDEX cable_run_span_id ON cable_run (span_id);

CREATE TABLE slack (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  cable_id TEXT NOT NULL REFERENCES cable (id) DEFERRABLE INITIALLY DEFERRED,
  span_id TEXT NOT NULL REFERENCES span (id) DEFERRABLE INITIALLY DEFERRED,
  offset_m REAL NOT NULL CHECK (offset_m >= 0 AND offset_m < 9e999),
  stored_m REAL NOT NULL CHECK (stored_m > 0 AND stored_m < 9e999),
  kind TEXT NOT NULL CHECK (kind IN ('access', 'storage')),
  terminal_id TEXT REFERENCES terminal (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX slack_cable_id ON slack (cable_id);
CREATE INDEX slack_span_id ON slack (span_id);
CREATE INDEX slack_terminal_id ON slack (terminal_id);

CREATE TABLE closure (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  cable_id TEXT NOT NULL REFERENCES cable (id) DEFERRABLE INITIALLY DEFERRED,
  span_id TEXT NOT NULL REFERENCES span (id) DEFERRABLE INITIALLY DEFERRED,
  offset_m REAL NOT NULL CHECK (offset_m >= 0 AND offset_m < 9e999),
  note TEXT NOT NULL CHECK (length(note) <= 2000)
) STRICT;
CREATE INDEX closure_cable_id ON closure (cable_id);
CREATE INDEX closure_span_id ON closure (span_id);
`;

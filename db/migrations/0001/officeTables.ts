/** Settings, issued revisions and waivers, as version 1 of the route file has them. */
export const officeTables = `
CREATE TABLE settings (
  id TEXT PRIMARY KEY NOT NULL CHECK (id = 'settings'),
  route_name TEXT NOT NULL CHECK (length(trim(route_name)) BETWEEN 1 AND 200),
  project TEXT NOT NULL CHECK (length(project) <= 2000),
  place TEXT NOT NULL CHECK (length(place) <= 2000),
  county TEXT NOT NULL CHECK (length(county) <= 2000),
  company TEXT NOT NULL CHECK (length(company) <= 2000),
  unit_system TEXT NOT NULL CHECK (unit_system IN ('us', 'metric')),
  origin_lon_deg REAL CHECK (abs(origin_lon_deg) < 9e999),
  origin_lat_deg REAL CHECK (abs(origin_lat_deg) < 9e999),
  datum TEXT NOT NULL CHECK (length(datum) <= 2000),
  standoff_m REAL NOT NULL CHECK (standoff_m > 0 AND standoff_m < 9e999),
  climbing_space_m REAL NOT NULL CHECK (climbing_space_m >= 0 AND climbing_space_m < 9e999),
  hanging_gap_m REAL NOT NULL CHECK (hanging_gap_m >= 0 AND hanging_gap_m < 9e999),
  opening_m REAL NOT NULL CHECK (opening_m > 0 AND opening_m < 9e999),
  access_slack_m REAL NOT NULL CHECK (access_slack_m > 0 AND access_slack_m < 9e999),
  drop_reach_m REAL NOT NULL CHECK (drop_reach_m > 0 AND drop_reach_m < 9e999),
  drop_allowance_m REAL NOT NULL CHECK (drop_allowance_m >= 0 AND drop_allowance_m < 9e999),
  spare_port_count INTEGER NOT NULL CHECK (spare_port_count >= 0),
  spare_fiber_per_tube_count INTEGER NOT NULL CHECK (spare_fiber_per_tube_count >= 0),
  strand_height_m REAL NOT NULL CHECK (strand_height_m > 0 AND strand_height_m < 9e999),
  clearance_set_id TEXT NOT NULL REFERENCES clearance_set (id) DEFERRABLE INITIALLY DEFERRED,
  loading_district_id TEXT NOT NULL REFERENCES loading_district (id) DEFERRABLE INITIALLY DEFERRED,
  strand_type_id TEXT NOT NULL REFERENCES strand_type (id) DEFERRABLE INITIALLY DEFERRED,
  drop_type_id TEXT NOT NULL REFERENCES drop_type (id) DEFERRABLE INITIALLY DEFERRED,
  optical_class_id TEXT NOT NULL REFERENCES optical_class (id) DEFERRABLE INITIALLY DEFERRED,
  stringing_sag_frac REAL NOT NULL CHECK (stringing_sag_frac BETWEEN 0 AND 1),
  stringing_deg_c REAL NOT NULL CHECK (abs(stringing_deg_c) < 9e999),
  max_strand_frac REAL NOT NULL CHECK (max_strand_frac BETWEEN 0 AND 1),
  other_wire_sag_frac REAL NOT NULL CHECK (other_wire_sag_frac BETWEEN 0 AND 1),
  splice_loss_db REAL NOT NULL CHECK (splice_loss_db >= 0 AND splice_loss_db < 9e999),
  connection_loss_db REAL NOT NULL CHECK (connection_loss_db >= 0 AND connection_loss_db < 9e999),
  margin_db REAL NOT NULL CHECK (margin_db >= 0 AND margin_db < 9e999),
  min_span_m REAL NOT NULL CHECK (min_span_m > 0 AND min_span_m < 9e999),
  max_span_m REAL NOT NULL CHECK (max_span_m > 0 AND max_span_m < 9e999),
  lashing_n_per_m REAL NOT NULL CHECK (lashing_n_per_m >= 0 AND lashing_n_per_m < 9e999),
  bill_allowance_frac REAL NOT NULL CHECK (bill_allowance_frac BETWEEN 0 AND 1)
) STRICT;
CREATE INDEX settings_clearance_set_id ON settings (clearance_set_id);
CREATE INDEX settings_loading_district_id ON settings (loading_district_id);
CREATE INDEX settings_strand_type_id ON settings (strand_type_id);
CREATE INDEX settings_drop_type_id ON settings (drop_type_id);
CREATE INDEX settings_optical_class_id ON settings (optical_class_id);

CREATE TABLE revision (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  letter TEXT NOT NULL CHECK (length(trim(letter)) BETWEEN 1 AND 200),
  date_iso TEXT NOT NULL CHECK (length(trim(date_iso)) BETWEEN 1 AND 200),
  "by" TEXT NOT NULL CHECK (length("by") <= 2000),
  checked_by TEXT NOT NULL CHECK (length(checked_by) <= 2000),
  reason TEXT NOT NULL CHECK (length(reason) <= 2000)
) STRICT;

CREATE TABLE waiver (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  rule_id TEXT NOT NULL CHECK (length(trim(rule_id)) BETWEEN 1 AND 200),
  subjects TEXT NOT NULL CHECK (length(trim(subjects)) BETWEEN 1 AND 200),
  reason TEXT NOT NULL CHECK (length(trim(reason)) BETWEEN 1 AND 200),
  "by" TEXT NOT NULL CHECK (length(trim("by")) BETWEEN 1 AND 200),
  at_iso TEXT NOT NULL CHECK (length(trim(at_iso)) BETWEEN 1 AND 200)
) STRICT;
`;

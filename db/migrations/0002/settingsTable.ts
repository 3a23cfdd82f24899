import { basisColumns, lineSurfaces } from "./sqlWords.ts";

/**
 * Settings of version 2: the one limit of strand tension has become a strength set, made from what the file had, and
 * there are standards for ground, guys, the usable space of a pole and drops.
 */
export const settingsTable = `
CREATE TABLE settings_next (
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
  strength_set_id TEXT NOT NULL REFERENCES strength_set (id) DEFERRABLE INITIALLY DEFERRED,
  loading_district_id TEXT NOT NULL REFERENCES loading_district (id) DEFERRABLE INITIALLY DEFERRED,
  strand_type_id TEXT NOT NULL REFERENCES strand_type (id) DEFERRABLE INITIALLY DEFERRED,
  drop_type_id TEXT NOT NULL REFERENCES drop_type (id) DEFERRABLE INITIALLY DEFERRED,
  optical_class_id TEXT NOT NULL REFERENCES optical_class (id) DEFERRABLE INITIALLY DEFERRED,
  stringing_sag_frac REAL NOT NULL CHECK (stringing_sag_frac BETWEEN 0 AND 1),
  stringing_deg_c REAL NOT NULL CHECK (abs(stringing_deg_c) < 9e999),
  ground_surface TEXT NOT NULL CHECK (ground_surface IN (${lineSurfaces})),
  unguyed_angle_rad REAL NOT NULL CHECK (unguyed_angle_rad >= 0 AND unguyed_angle_rad < 9e999),
  usable_from_m REAL NOT NULL CHECK (usable_from_m >= 0 AND usable_from_m < 9e999),
  pole_top_gap_m REAL NOT NULL CHECK (pole_top_gap_m >= 0 AND pole_top_gap_m < 9e999),
  sag_match_frac REAL NOT NULL CHECK (sag_match_frac BETWEEN 0 AND 1),
  drop_sag_frac REAL NOT NULL CHECK (drop_sag_frac BETWEEN 0 AND 1),
  other_wire_sag_frac REAL NOT NULL CHECK (other_wire_sag_frac BETWEEN 0 AND 1),
  splice_loss_db REAL NOT NULL CHECK (splice_loss_db >= 0 AND splice_loss_db < 9e999),
  connection_loss_db REAL NOT NULL CHECK (connection_loss_db >= 0 AND connection_loss_db < 9e999),
  margin_db REAL NOT NULL CHECK (margin_db >= 0 AND margin_db < 9e999),
  min_span_m REAL NOT NULL CHECK (min_span_m > 0 AND min_span_m < 9e999),
  max_span_m REAL NOT NULL CHECK (max_span_m > 0 AND max_span_m < 9e999),
  lashing_n_per_m REAL NOT NULL CHECK (lashing_n_per_m >= 0 AND lashing_n_per_m < 9e999),
  bill_allowance_frac REAL NOT NULL CHECK (bill_allowance_frac BETWEEN 0 AND 1)
) STRICT;

INSERT INTO strength_set
  SELECT 'strength-own', 'As the company had it', 'company setting', '', '', 'practice' FROM settings;
INSERT INTO strength_limit
  SELECT 'strength-own-strand-loaded', 'strength-own', 'strand', 'loaded', max_strand_frac,
    'company setting', 'maxStrandFrac', '', 'practice' FROM settings;

INSERT INTO settings_next
  SELECT id, route_name, project, place, county, company, unit_system, origin_lon_deg, origin_lat_deg, datum, standoff_m,
    climbing_space_m, hanging_gap_m, opening_m, access_slack_m, drop_reach_m, drop_allowance_m, spare_port_count,
    spare_fiber_per_tube_count, strand_height_m, clearance_set_id,
    'strength-own', loading_district_id, strand_type_id, drop_type_id, optical_class_id, stringing_sag_frac,
    stringing_deg_c, 'pedestrian', 0.0872664625997165, 5.4864, 0.1524, 0.25, 0.03,
    other_wire_sag_frac, splice_loss_db, connection_loss_db, margin_db, min_span_m, max_span_m, lashing_n_per_m,
    bill_allowance_frac FROM settings;
DROP TABLE settings;
ALTER TABLE settings_next RENAME TO settings;
CREATE INDEX settings_clearance_set_id ON settings (clearance_set_id);
CREATE INDEX settings_strength_set_id ON settings (strength_set_id);
CREATE INDEX settings_loading_district_id ON settings (loading_district_id);
CREATE INDEX settings_strand_type_id ON settings (strand_type_id);
CREATE INDEX settings_drop_type_id ON settings (drop_type_id);
CREATE INDEX settings_optical_class_id ON settings (optical_class_id);

CREATE TABLE setting_basis (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
${basisColumns}
) STRICT;
`;

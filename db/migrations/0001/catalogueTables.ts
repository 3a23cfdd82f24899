/** What is bought and what limits hold, as version 1 of the route file has them. */
export const catalogueTables = `
CREATE TABLE strand_type (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  diameter_m REAL NOT NULL CHECK (diameter_m > 0 AND diameter_m < 9e999),
  weight_n_per_m REAL NOT NULL CHECK (weight_n_per_m > 0 AND weight_n_per_m < 9e999),
  area_m2 REAL NOT NULL CHECK (area_m2 > 0 AND area_m2 < 9e999),
  modulus_pa REAL NOT NULL CHECK (modulus_pa > 0 AND modulus_pa < 9e999),
  expansion_per_c REAL NOT NULL CHECK (expansion_per_c > 0 AND expansion_per_c < 9e999),
  breaking_n REAL NOT NULL CHECK (breaking_n > 0 AND breaking_n < 9e999),
  cost_per_m REAL NOT NULL CHECK (cost_per_m >= 0 AND cost_per_m < 9e999),
  basis_document TEXT NOT NULL CHECK (length(basis_document) <= 2000),
  basis_clause TEXT NOT NULL CHECK (length(basis_clause) <= 2000),
  basis_edition TEXT NOT NULL CHECK (length(basis_edition) <= 2000),
  basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))
) STRICT;

CREATE TABLE cable_type (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  fiber_count INTEGER NOT NULL CHECK (fiber_count > 0),
  fibers_per_tube INTEGER NOT NULL CHECK (fibers_per_tube > 0),
  diameter_m REAL NOT NULL CHECK (diameter_m > 0 AND diameter_m < 9e999),
  weight_n_per_m REAL NOT NULL CHECK (weight_n_per_m > 0 AND weight_n_per_m < 9e999),
  reel_length_m REAL NOT NULL CHECK (reel_length_m > 0 AND reel_length_m < 9e999),
  fiber_excess_frac REAL NOT NULL CHECK (fiber_excess_frac BETWEEN 0 AND 1),
  cost_per_m REAL NOT NULL CHECK (cost_per_m >= 0 AND cost_per_m < 9e999),
  basis_document TEXT NOT NULL CHECK (length(basis_document) <= 2000),
  basis_clause TEXT NOT NULL CHECK (length(basis_clause) <= 2000),
  basis_edition TEXT NOT NULL CHECK (length(basis_edition) <= 2000),
  basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))
) STRICT;

CREATE TABLE splitter_type (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  leg_count INTEGER NOT NULL CHECK (leg_count > 0),
  max_loss_db REAL NOT NULL CHECK (max_loss_db >= 0 AND max_loss_db < 9e999),
  typical_loss_db REAL NOT NULL CHECK (typical_loss_db >= 0 AND typical_loss_db < 9e999),
  basis_document TEXT NOT NULL CHECK (length(basis_document) <= 2000),
  basis_clause TEXT NOT NULL CHECK (length(basis_clause) <= 2000),
  basis_edition TEXT NOT NULL CHECK (length(basis_edition) <= 2000),
  basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))
) STRICT;

CREATE TABLE terminal_model (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  port_count INTEGER NOT NULL CHECK (port_count > 0),
  splitter_type_id TEXT NOT NULL REFERENCES splitter_type (id) DEFERRABLE INITIALLY DEFERRED,
  splitter_count INTEGER NOT NULL CHECK (splitter_count > 0),
  rank_count INTEGER NOT NULL CHECK (rank_count > 0),
  numbering TEXT NOT NULL CHECK (numbering IN ('rank', 'column')),
  length_m REAL NOT NULL CHECK (length_m > 0 AND length_m < 9e999),
  weight_n REAL NOT NULL CHECK (weight_n > 0 AND weight_n < 9e999),
  cost REAL NOT NULL CHECK (cost >= 0 AND cost < 9e999),
  basis_document TEXT NOT NULL CHECK (length(basis_document) <= 2000),
  basis_clause TEXT NOT NULL CHECK (length(basis_clause) <= 2000),
  basis_edition TEXT NOT NULL CHECK (length(basis_edition) <= 2000),
  basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))
) STRICT;
CREATE INDEX terminal_model_splitter_type_id ON terminal_model (splitter_type_id);

CREATE TABLE drop_type (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  weight_n_per_m REAL NOT NULL CHECK (weight_n_per_m > 0 AND weight_n_per_m < 9e999),
  attenuation_db_per_km REAL NOT NULL CHECK (attenuation_db_per_km >= 0 AND attenuation_db_per_km < 9e999),
  cost_per_m REAL NOT NULL CHECK (cost_per_m >= 0 AND cost_per_m < 9e999),
  cost_each REAL NOT NULL CHECK (cost_each >= 0 AND cost_each < 9e999),
  basis_document TEXT NOT NULL CHECK (length(basis_document) <= 2000),
  basis_clause TEXT NOT NULL CHECK (length(basis_clause) <= 2000),
  basis_edition TEXT NOT NULL CHECK (length(basis_edition) <= 2000),
  basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))
) STRICT;

CREATE TABLE clearance_set (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  basis_document TEXT NOT NULL CHECK (length(basis_document) <= 2000),
  basis_clause TEXT NOT NULL CHECK (length(basis_clause) <= 2000),
  basis_edition TEXT NOT NULL CHECK (length(basis_edition) <= 2000),
  basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))
) STRICT;

CREATE TABLE clearance_limit (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  clearance_set_id TEXT NOT NULL REFERENCES clearance_set (id) DEFERRABLE INITIALLY DEFERRED,
  surface TEXT NOT NULL CHECK (surface IN (
    'road', 'driveway', 'rail', 'water', 'pedestrian', 'field',
    'supplyAtPole', 'supplyInSpan', 'neutralAtPole', 'neutralInSpan', 'communicationAtPole', 'communicationInSpan'
  )),
  limit_m REAL NOT NULL CHECK (limit_m > 0 AND limit_m < 9e999),
  basis_document TEXT NOT NULL CHECK (length(basis_document) <= 2000),
  basis_clause TEXT NOT NULL CHECK (length(basis_clause) <= 2000),
  basis_edition TEXT NOT NULL CHECK (length(basis_edition) <= 2000),
  basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))
) STRICT;
CREATE INDEX clearance_limit_clearance_set_id ON clearance_limit (clearance_set_id);

CREATE TABLE loading_district (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  ice_m REAL NOT NULL CHECK (ice_m >= 0 AND ice_m < 9e999),
  ice_density_kg_per_m3 REAL NOT NULL CHECK (ice_density_kg_per_m3 > 0 AND ice_density_kg_per_m3 < 9e999),
  wind_pa REAL NOT NULL CHECK (wind_pa >= 0 AND wind_pa < 9e999),
  temperature_deg_c REAL NOT NULL CHECK (abs(temperature_deg_c) < 9e999),
  constant_n_per_m REAL NOT NULL CHECK (constant_n_per_m >= 0 AND constant_n_per_m < 9e999),
  hot_deg_c REAL NOT NULL CHECK (abs(hot_deg_c) < 9e999),
  iced_deg_c REAL NOT NULL CHECK (abs(iced_deg_c) < 9e999),
  basis_document TEXT NOT NULL CHECK (length(basis_document) <= 2000),
  basis_clause TEXT NOT NULL CHECK (length(basis_clause) <= 2000),
  basis_edition TEXT NOT NULL CHECK (length(basis_edition) <= 2000),
  basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))
) STRICT;

CREATE TABLE optical_class (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  system TEXT NOT NULL CHECK (length(trim(system)) BETWEEN 1 AND 200),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  min_loss_db REAL NOT NULL CHECK (min_loss_db >= 0 AND min_loss_db < 9e999),
  max_loss_db REAL NOT NULL CHECK (max_loss_db > 0 AND max_loss_db < 9e999),
  max_split_count INTEGER NOT NULL CHECK (max_split_count > 0),
  up_nm REAL NOT NULL CHECK (up_nm > 0 AND up_nm < 9e999),
  down_nm REAL NOT NULL CHECK (down_nm > 0 AND down_nm < 9e999),
  up_db_per_km REAL NOT NULL CHECK (up_db_per_km > 0 AND up_db_per_km < 9e999),
  down_db_per_km REAL NOT NULL CHECK (down_db_per_km > 0 AND down_db_per_km < 9e999),
  basis_document TEXT NOT NULL CHECK (length(basis_document) <= 2000),
  basis_clause TEXT NOT NULL CHECK (length(basis_clause) <= 2000),
  basis_edition TEXT NOT NULL CHECK (length(basis_edition) <= 2000),
  basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))
) STRICT;

CREATE TABLE hardware (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  unit TEXT NOT NULL CHECK (length(trim(unit)) BETWEEN 1 AND 200),
  per TEXT NOT NULL CHECK (per IN ('pole', 'terminal', 'drop', 'coil', 'closure', 'deadEnd', 'strandM', 'cableM')),
  quantity REAL NOT NULL CHECK (quantity > 0 AND quantity < 9e999),
  cost REAL NOT NULL CHECK (cost >= 0 AND cost < 9e999),
  note TEXT NOT NULL CHECK (length(note) <= 2000),
  basis_document TEXT NOT NULL CHECK (length(basis_document) <= 2000),
  basis_clause TEXT NOT NULL CHECK (length(basis_clause) <= 2000),
  basis_edition TEXT NOT NULL CHECK (length(basis_edition) <= 2000),
  basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))
) STRICT;
`;

/** Terminals, fibers, living units and drops, as version 1 of the route file has them. */
export const serviceTables = `
CREATE TABLE terminal (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  terminal_model_id TEXT NOT NULL REFERENCES terminal_model (id) DEFERRABLE INITIALLY DEFERRED,
  cable_id TEXT NOT NULL REFERENCES cable (id) DEFERRABLE INITIALLY DEFERRED,
  span_id TEXT NOT NULL REFERENCES span (id) DEFERRABLE INITIALLY DEFERRED,
  offset_m REAL NOT NULL CHECK (offset_m > 0 AND offset_m < 9e999),
  pinned INTEGER NOT NULL CHECK (pinned IN (0, 1)),
  reason TEXT NOT NULL CHECK (length(reason) <= 2000)
) STRICT;
CREATE INDEX terminal_terminal_model_id ON terminal (terminal_model_id);
CREATE INDEX terminal_cable_id ON terminal (cable_id);
CREATE INDEX terminal_span_id ON terminal (span_id);

CREATE TABLE splitter (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  terminal_id TEXT NOT NULL REFERENCES terminal (id) DEFERRABLE INITIALLY DEFERRED,
  splitter_type_id TEXT NOT NULL REFERENCES splitter_type (id) DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position > 0),
  first_port INTEGER NOT NULL CHECK (first_port > 0)
) STRICT;
CREATE INDEX splitter_terminal_id ON splitter (terminal_id);
CREATE INDEX splitter_splitter_type_id ON splitter (splitter_type_id);

CREATE TABLE feed (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  optical_class_id TEXT NOT NULL REFERENCES optical_class (id) DEFERRABLE INITIALLY DEFERRED,
  hub_split_count INTEGER NOT NULL CHECK (hub_split_count > 0),
  upstream_loss_db REAL NOT NULL CHECK (upstream_loss_db >= 0 AND upstream_loss_db < 9e999),
  upstream_m REAL NOT NULL CHECK (upstream_m >= 0 AND upstream_m < 9e999)
) STRICT;
CREATE INDEX feed_optical_class_id ON feed (optical_class_id);

CREATE TABLE fiber_use (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  cable_id TEXT NOT NULL REFERENCES cable (id) DEFERRABLE INITIALLY DEFERRED,
  fiber INTEGER NOT NULL CHECK (fiber > 0),
  purpose TEXT NOT NULL CHECK (purpose IN ('terminal', 'lateral', 'reserved', 'dead')),
  terminal_id TEXT REFERENCES terminal (id) DEFERRABLE INITIALLY DEFERRED,
  splitter_id TEXT REFERENCES splitter (id) DEFERRABLE INITIALLY DEFERRED,
  closure_id TEXT REFERENCES closure (id) DEFERRABLE INITIALLY DEFERRED,
  lateral_cable_id TEXT REFERENCES cable (id) DEFERRABLE INITIALLY DEFERRED,
  lateral_fiber INTEGER CHECK (lateral_fiber > 0),
  feed_id TEXT REFERENCES feed (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX fiber_use_cable_id ON fiber_use (cable_id);
CREATE INDEX fiber_use_terminal_id ON fiber_use (terminal_id);
CREATE INDEX fiber_use_splitter_id ON fiber_use (splitter_id);
CREATE INDEX fiber_use_closure_id ON fiber_use (closure_id);
CREATE INDEX fiber_use_lateral_cable_id ON fiber_use (lateral_cable_id);
CREATE INDEX fiber_use_feed_id ON fiber_use (feed_id);

CREATE TABLE living_unit (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  address TEXT NOT NULL CHECK (length(trim(address)) BETWEEN 1 AND 200),
  east_m REAL NOT NULL CHECK (abs(east_m) < 9e999),
  north_m REAL NOT NULL CHECK (abs(north_m) < 9e999),
  kind TEXT NOT NULL CHECK (kind IN ('home', 'business', 'lot')),
  building TEXT NOT NULL CHECK (length(building) <= 2000),
  attach_height_m REAL CHECK (attach_height_m > 0 AND attach_height_m < 9e999),
  note TEXT NOT NULL CHECK (length(note) <= 2000)
) STRICT;

CREATE TABLE "drop" (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  terminal_id TEXT NOT NULL REFERENCES terminal (id) DEFERRABLE INITIALLY DEFERRED,
  port INTEGER NOT NULL CHECK (port > 0),
  living_unit_id TEXT NOT NULL REFERENCES living_unit (id) DEFERRABLE INITIALLY DEFERRED,
  drop_type_id TEXT NOT NULL REFERENCES drop_type (id) DEFERRABLE INITIALLY DEFERRED,
  pinned INTEGER NOT NULL CHECK (pinned IN (0, 1))
) STRICT;
CREATE INDEX drop_terminal_id ON "drop" (terminal_id);
CREATE INDEX drop_living_unit_id ON "drop" (living_unit_id);
CREATE INDEX drop_drop_type_id ON "drop" (drop_type_id);
`;

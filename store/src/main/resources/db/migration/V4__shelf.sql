-- Shelf and equipment: bottles with their book, tanks, thermometers, own minima of stock.

CREATE TABLE bottle (
  id INTEGER PRIMARY KEY,
  letter TEXT NOT NULL,
  contents TEXT NOT NULL,
  strength TEXT NOT NULL CHECK (strength IN ('concentrate', 'stock', 'working')),
  bath TEXT NOT NULL,
  full_volume_ml REAL NOT NULL CHECK (full_volume_ml > 0),
  one_shot INTEGER NOT NULL CHECK (one_shot IN (0, 1)),
  mixed_on TEXT,
  opened_on TEXT,
  note TEXT NOT NULL,
  discarded INTEGER NOT NULL DEFAULT 0 CHECK (discarded IN (0, 1))
) STRICT;

-- A letter is free again when its bottle has left the shelf.
CREATE UNIQUE INDEX bottle_on_shelf ON bottle (letter) WHERE discarded = 0;

-- The book of a bottle: lines are added, never changed.
CREATE TABLE bottle_entry (
  id INTEGER PRIMARY KEY,
  bottle_id INTEGER NOT NULL REFERENCES bottle (id),
  kind TEXT NOT NULL,
  change_volume_ml REAL NOT NULL,
  film_rolls REAL NOT NULL,
  run TEXT NOT NULL,
  entered_at TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT;

CREATE INDEX bottle_entry_by_bottle ON bottle_entry (bottle_id, id);
CREATE INDEX bottle_entry_by_run ON bottle_entry (run);

CREATE TABLE stock_minimum (
  developer TEXT PRIMARY KEY COLLATE NOCASE,
  per_roll_volume_ml REAL NOT NULL CHECK (per_roll_volume_ml > 0),
  source TEXT NOT NULL
) STRICT;

CREATE TABLE tank (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL COLLATE NOCASE UNIQUE,
  vessel TEXT NOT NULL,
  holds_volume_ml REAL NOT NULL CHECK (holds_volume_ml > 0)
) STRICT;

CREATE TABLE tank_room (
  tank_id INTEGER NOT NULL REFERENCES tank (id),
  format TEXT NOT NULL,
  most INTEGER NOT NULL CHECK (most > 0),
  each_volume_ml REAL NOT NULL CHECK (each_volume_ml > 0),
  PRIMARY KEY (tank_id, format)
) STRICT;

CREATE TABLE thermometer (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL COLLATE NOCASE UNIQUE
) STRICT;

-- Every comparison is kept; the last one counts.
CREATE TABLE thermometer_offset (
  id INTEGER PRIMARY KEY,
  thermometer_id INTEGER NOT NULL REFERENCES thermometer (id),
  correction_k REAL NOT NULL,
  at_temperature_c REAL NOT NULL,
  doubt_k REAL NOT NULL,
  found_on TEXT NOT NULL,
  how TEXT NOT NULL
) STRICT;

CREATE INDEX thermometer_offset_by_thermometer ON thermometer_offset (thermometer_id, id);

-- Drawer and plan: rolls, loads, settings, and the words rolls are found by.
-- Moments are ISO-8601 text in UTC, days ISO-8601 text, units stand in the column names.

CREATE TABLE roll (
  id INTEGER PRIMARY KEY,
  number TEXT NOT NULL COLLATE NOCASE UNIQUE,
  format TEXT NOT NULL,
  frames INTEGER,
  film TEXT NOT NULL,
  film_code TEXT,
  kind TEXT NOT NULL CHECK (kind IN ('b/w', 'C-41', 'E-6')),
  exposure_index REAL,
  title TEXT NOT NULL,
  precious INTEGER NOT NULL CHECK (precious IN (0, 1)),
  exposed_on TEXT,
  added_at TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('waiting', 'loaded', 'processed', 'filed', 'withdrawn')),
  note TEXT NOT NULL,
  processed_at TEXT,
  sleeve TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE INDEX roll_by_state ON roll (state, added_at);

CREATE TABLE load (
  id INTEGER PRIMARY KEY,
  state TEXT NOT NULL CHECK (state IN ('planned', 'running', 'done', 'dissolved')),
  made_at TEXT NOT NULL,
  tank TEXT NOT NULL,
  process TEXT NOT NULL,
  developer TEXT NOT NULL,
  dilution TEXT NOT NULL,
  temperature_c REAL NOT NULL,
  development_ms INTEGER NOT NULL,
  standing TEXT NOT NULL,
  source TEXT NOT NULL,
  band_low_ms INTEGER,
  band_high_ms INTEGER,
  volume_ml REAL NOT NULL,
  starts_at TEXT,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE load_roll (
  load_id INTEGER NOT NULL REFERENCES load (id),
  position INTEGER NOT NULL,
  roll_id INTEGER NOT NULL REFERENCES roll (id),
  own_ms INTEGER,
  own_standing TEXT,
  PRIMARY KEY (load_id, position)
) STRICT;

CREATE INDEX load_roll_by_roll ON load_roll (roll_id);

CREATE TABLE load_bottle (
  load_id INTEGER NOT NULL REFERENCES load (id),
  bath TEXT NOT NULL,
  letter TEXT NOT NULL,
  PRIMARY KEY (load_id, bath)
) STRICT;

CREATE TABLE setting (
  name TEXT PRIMARY KEY,
  value TEXT NOT NULL
) STRICT;

CREATE VIRTUAL TABLE roll_words USING fts5 (
  number, film, title, developer, record,
  tokenize = 'unicode61 remove_diacritics 2',
  prefix = '2 3'
);

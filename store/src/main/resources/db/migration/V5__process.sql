-- Processes of the user's own. Steps have the columns that the steps of a run have.

CREATE TABLE process (
  slug TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  about TEXT NOT NULL,
  changed_at TEXT NOT NULL
) STRICT;

CREATE TABLE process_step (
  slug TEXT NOT NULL REFERENCES process (slug),
  position INTEGER NOT NULL,
  kind TEXT NOT NULL,
  bottle TEXT,
  duration_ms INTEGER,
  pour_in_ms INTEGER NOT NULL,
  drain_lead_ms INTEGER NOT NULL,
  manner TEXT NOT NULL,
  initial_count INTEGER,
  initial_ms INTEGER,
  initial_counted INTEGER,
  interval_ms INTEGER NOT NULL,
  cycle_count INTEGER,
  cycle_ms INTEGER,
  cycle_counted INTEGER,
  tap INTEGER NOT NULL,
  revolutions_per_minute REAL NOT NULL,
  band_low_c REAL,
  band_high_c REAL,
  back_to TEXT,
  light TEXT NOT NULL,
  lengthen_to_ms INTEGER,
  standing TEXT NOT NULL,
  source TEXT NOT NULL,
  PRIMARY KEY (slug, position)
) STRICT;

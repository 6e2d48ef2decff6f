-- Pieces of film exposed in steps: what was done to each, and every density as it was read.
CREATE TABLE strip (
  id INTEGER PRIMARY KEY,
  film TEXT NOT NULL,
  developer TEXT NOT NULL,
  dilution TEXT NOT NULL,
  time_ms INTEGER NOT NULL CHECK (time_ms > 0),
  temperature_c REAL,
  vessel TEXT NOT NULL DEFAULT '',
  developed_on TEXT,
  light TEXT NOT NULL CHECK (light IN ('calibrated', 'estimated', 'relative', 'camera')),
  scale TEXT NOT NULL CHECK (scale IN ('logH', 'step', 'stops')),
  clear_log_h REAL,
  metered_index REAL,
  base_fog REAL,
  density_step REAL NOT NULL,
  note TEXT NOT NULL DEFAULT '',
  kept_at TEXT NOT NULL,
  -- A strip that was read again points at the one that took its place; none is ever deleted.
  withdrawn_at TEXT,
  replaced_by INTEGER REFERENCES strip (id)
) STRICT;

CREATE TABLE strip_reading (
  strip_id INTEGER NOT NULL REFERENCES strip (id),
  line INTEGER NOT NULL,
  place REAL NOT NULL,
  density REAL NOT NULL,
  PRIMARY KEY (strip_id, line)
) STRICT;

-- The tablet's own densities, step by step, as they were when the strip was made.
CREATE TABLE strip_tablet (
  strip_id INTEGER NOT NULL REFERENCES strip (id),
  step INTEGER NOT NULL,
  density REAL NOT NULL,
  PRIMARY KEY (strip_id, step)
) STRICT;

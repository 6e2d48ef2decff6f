-- Runs: what was planned when a run was opened, and everything that happened, in order.
-- A run is complete by itself: names and steps are copied, not referred to. Events are only ever added.

CREATE TABLE run (
  id INTEGER PRIMARY KEY,
  load_id INTEGER REFERENCES load (id),
  name TEXT NOT NULL,
  tank TEXT NOT NULL,
  process TEXT NOT NULL,
  process_name TEXT NOT NULL,
  developer TEXT NOT NULL,
  dilution TEXT NOT NULL,
  temperature_c REAL,
  time_standing TEXT NOT NULL,
  time_source TEXT NOT NULL,
  volume_ml REAL,
  opened_at TEXT NOT NULL,
  phase TEXT NOT NULL CHECK (phase IN ('ready', 'running', 'waiting', 'finished', 'abandoned')),
  started_at TEXT,
  ended_at TEXT
) STRICT;

CREATE INDEX run_by_phase ON run (phase);
CREATE INDEX run_by_load ON run (load_id);

CREATE TABLE run_roll (
  run_id INTEGER NOT NULL REFERENCES run (id),
  position INTEGER NOT NULL,
  number TEXT NOT NULL,
  film TEXT NOT NULL,
  place TEXT NOT NULL,
  film_rolls REAL NOT NULL,
  PRIMARY KEY (run_id, position)
) STRICT;

CREATE INDEX run_roll_by_number ON run_roll (number);

CREATE TABLE run_step (
  run_id INTEGER NOT NULL REFERENCES run (id),
  position INTEGER NOT NULL,
  taken_ml REAL,
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
  PRIMARY KEY (run_id, position)
) STRICT;

CREATE TABLE run_event (
  run_id INTEGER NOT NULL REFERENCES run (id),
  sequence INTEGER NOT NULL,
  event_id TEXT NOT NULL,
  step INTEGER NOT NULL,
  kind TEXT NOT NULL,
  occurred_at TEXT NOT NULL,
  received_at TEXT NOT NULL,
  screen TEXT NOT NULL,
  pressed_key TEXT NOT NULL,
  origin TEXT,
  confirmed INTEGER,
  moment TEXT,
  words TEXT,
  advice TEXT,
  by_ms INTEGER,
  thermometer TEXT,
  raw_c REAL,
  corrected_c REAL,
  from_at TEXT,
  to_at TEXT,
  refers_to TEXT,
  PRIMARY KEY (run_id, sequence),
  UNIQUE (run_id, event_id)
) STRICT;

CREATE TABLE run_alive (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  seen_at TEXT NOT NULL
) STRICT;

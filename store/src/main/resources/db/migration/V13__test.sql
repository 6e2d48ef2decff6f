-- Tests of baths and of washed film. A test without an end still runs: its clock is started_at.
CREATE TABLE bath_test (
  id INTEGER PRIMARY KEY,
  kind TEXT NOT NULL CHECK (kind IN ('clearing', 'leader', 'iodide', 'residue')),
  bottle_id INTEGER REFERENCES bottle (id),
  letter TEXT NOT NULL,
  clip_film TEXT,
  clip_dilution TEXT,
  clip_temperature_c REAL,
  fresh INTEGER CHECK (fresh IN (0, 1)),
  started_at TEXT NOT NULL,
  ended_at TEXT,
  took_ms INTEGER,
  outcome TEXT CHECK (outcome IN ('passed', 'failed', 'baseline made', 'not comparable', 'not judged')),
  times_baseline REAL,
  reason TEXT,
  note TEXT
) STRICT;

-- The rolls whose washing was tested.
CREATE TABLE bath_test_roll (
  test_id INTEGER NOT NULL REFERENCES bath_test (id),
  roll TEXT NOT NULL,
  PRIMARY KEY (test_id, roll)
) STRICT;

-- One test at a time of a bottle.
CREATE UNIQUE INDEX bath_test_open ON bath_test (bottle_id) WHERE ended_at IS NULL;
CREATE INDEX bath_test_by_bottle ON bath_test (bottle_id, id);
CREATE INDEX bath_test_by_roll ON bath_test_roll (roll);

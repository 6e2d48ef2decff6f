-- Judged rolls: what was seen on the negatives, how they were developed, and what a measured
-- contrast is held against. Facts only; factors are worked out from them. A judgement that was taken
-- back stays for the record and counts no more.
CREATE TABLE judgement (
  id INTEGER PRIMARY KEY,
  roll TEXT NOT NULL COLLATE NOCASE,
  film_code TEXT NOT NULL,
  film TEXT NOT NULL,
  developer TEXT NOT NULL,
  exposure_index REAL,
  judged_at TEXT NOT NULL,
  edge_print TEXT NOT NULL,
  shadows TEXT,
  contrast TEXT,
  base_fog_density REAL,
  shadow_density REAL,
  light_density REAL,
  developed_at TEXT NOT NULL,
  lasted_ms INTEGER CHECK (lasted_ms > 0),
  makers_ms INTEGER CHECK (makers_ms > 0),
  makers_source TEXT NOT NULL,
  series TEXT,
  expected_contrast REAL,
  slope REAL,
  why_no_contrast TEXT NOT NULL,
  water TEXT NOT NULL,
  thermometer TEXT NOT NULL,
  batch TEXT NOT NULL,
  taken_back_at TEXT,
  CHECK ((shadow_density IS NULL) = (light_density IS NULL)),
  CHECK ((expected_contrast IS NULL) = (slope IS NULL))
) STRICT;

-- One judgement of a roll counts; saying it anew takes the earlier one back.
CREATE UNIQUE INDEX judgement_that_counts ON judgement (roll) WHERE taken_back_at IS NULL;

-- Factors that were accepted, each with the figures of that day; one at a time is in use.
CREATE TABLE own_factor (
  id INTEGER PRIMARY KEY,
  film_code TEXT NOT NULL,
  developer TEXT NOT NULL,
  ln_factor REAL NOT NULL,
  ln_sd REAL NOT NULL CHECK (ln_sd >= 0),
  rolls INTEGER NOT NULL CHECK (rolls > 0),
  accepted_at TEXT NOT NULL,
  taken_back_at TEXT
) STRICT;

CREATE UNIQUE INDEX own_factor_in_use ON own_factor (film_code, developer)
  WHERE taken_back_at IS NULL;

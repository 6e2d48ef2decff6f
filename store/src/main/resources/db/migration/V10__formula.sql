-- Formulas of the user's own, and what was mixed.

CREATE TABLE own_formula (
  id INTEGER PRIMARY KEY,
  code TEXT NOT NULL COLLATE NOCASE UNIQUE,
  name TEXT NOT NULL,
  kind TEXT NOT NULL,
  source TEXT NOT NULL,
  note TEXT NOT NULL,
  kept_at TEXT NOT NULL
) STRICT;

-- One line each, in order of dissolving: a mass or a volume, never both.
CREATE TABLE own_formula_line (
  formula_id INTEGER NOT NULL REFERENCES own_formula (id),
  position INTEGER NOT NULL,
  ingredient TEXT NOT NULL,
  mass_g REAL CHECK (mass_g > 0),
  volume_ml REAL CHECK (volume_ml > 0),
  CHECK ((mass_g IS NULL) <> (volume_ml IS NULL)),
  PRIMARY KEY (formula_id, position)
) STRICT;

-- A batch keeps its own copy of what was planned: a formula that is changed later changes no batch.
CREATE TABLE batch (
  id INTEGER PRIMARY KEY,
  formula TEXT NOT NULL,
  name TEXT NOT NULL,
  kind TEXT NOT NULL,
  total_volume_ml REAL NOT NULL CHECK (total_volume_ml > 0),
  balance_step_g REAL NOT NULL CHECK (balance_step_g > 0),
  standing TEXT NOT NULL,
  begun_at TEXT NOT NULL,
  bottle_id INTEGER REFERENCES bottle (id)
) STRICT;

CREATE INDEX batch_by_bottle ON batch (bottle_id);

CREATE TABLE batch_step (
  batch_id INTEGER NOT NULL REFERENCES batch (id),
  position INTEGER NOT NULL,
  ingredient TEXT NOT NULL,
  planned_mass_g REAL,
  planned_volume_ml REAL,
  how TEXT NOT NULL,
  weighed_mass_g REAL,
  weighed_volume_ml REAL,
  done_at TEXT,
  PRIMARY KEY (batch_id, position)
) STRICT;

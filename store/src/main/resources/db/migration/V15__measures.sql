-- What is weighed and measured with: the balance, and syringes and graduates.

-- One balance; no row until somebody has said what it shows.
CREATE TABLE balance (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  step_g REAL NOT NULL CHECK (step_g > 0)
) STRICT;

CREATE TABLE measure (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE COLLATE NOCASE,
  capacity_volume_ml REAL NOT NULL CHECK (capacity_volume_ml > 0),
  division_volume_ml REAL NOT NULL CHECK (division_volume_ml > 0)
) STRICT;

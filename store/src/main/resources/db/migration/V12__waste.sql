-- Used chemistry that is collected: jugs, and a book of lines that are added and never changed.

CREATE TABLE waste_jug (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL COLLATE NOCASE UNIQUE,
  kind TEXT NOT NULL CHECK (kind IN ('silver-bearing', 'developer', 'stop', 'other')),
  holds_volume_ml REAL NOT NULL CHECK (holds_volume_ml > 0),
  kept_at TEXT NOT NULL
) STRICT;

-- A pouring, or a handing in, after which the jug is empty. A line taken back points at the one it undoes.
CREATE TABLE waste_line (
  id INTEGER PRIMARY KEY,
  jug_id INTEGER NOT NULL REFERENCES waste_jug (id),
  kind TEXT NOT NULL CHECK (kind IN ('poured', 'handed in', 'taken back')),
  happened_at TEXT NOT NULL,
  contents TEXT NOT NULL DEFAULT '',
  bath TEXT,
  ingredients TEXT NOT NULL DEFAULT '',
  bottle TEXT NOT NULL DEFAULT '',
  volume_ml REAL NOT NULL DEFAULT 0,
  handed_on TEXT,
  handed_to TEXT NOT NULL DEFAULT '',
  undoes INTEGER REFERENCES waste_line (id),
  note TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE INDEX waste_line_by_jug ON waste_line (jug_id, id);

-- One roll cut into three pieces to measure a film: what was planned, and how far it has come.
CREATE TABLE test_roll (
  id INTEGER PRIMARY KEY,
  film TEXT NOT NULL,
  metered_index REAL NOT NULL,
  developer TEXT NOT NULL,
  dilution TEXT NOT NULL,
  temperature_c REAL,
  vessel TEXT NOT NULL DEFAULT '',
  -- marks as they stand on the dials, for example 1/60 at f/8
  metered TEXT NOT NULL,
  fastest TEXT NOT NULL,
  slowest TEXT NOT NULL,
  widest TEXT NOT NULL,
  smallest TEXT NOT NULL,
  shortest_ms INTEGER NOT NULL,
  middle_ms INTEGER NOT NULL,
  longest_ms INTEGER NOT NULL,
  kept_at TEXT NOT NULL,
  -- put away: it stays on file and is not shown
  away_at TEXT
) STRICT;

CREATE TABLE test_roll_step (
  test_roll_id INTEGER NOT NULL REFERENCES test_roll (id),
  step TEXT NOT NULL,
  done_at TEXT NOT NULL,
  note TEXT NOT NULL DEFAULT '',
  PRIMARY KEY (test_roll_id, step)
) STRICT;

CREATE TABLE test_roll_piece (
  test_roll_id INTEGER NOT NULL REFERENCES test_roll (id),
  piece INTEGER NOT NULL CHECK (piece BETWEEN 1 AND 3),
  time_ms INTEGER NOT NULL CHECK (time_ms > 0),
  temperature_c REAL,
  developed_on TEXT NOT NULL,
  -- the curve read from it; where that was read again, the newer one is found from it
  strip_id INTEGER REFERENCES strip (id),
  PRIMARY KEY (test_roll_id, piece)
) STRICT;

-- What was typed for a frame, also where it is no number yet.
CREATE TABLE test_roll_reading (
  test_roll_id INTEGER NOT NULL REFERENCES test_roll (id),
  frame INTEGER NOT NULL CHECK (frame BETWEEN 1 AND 36),
  first TEXT NOT NULL DEFAULT '',
  second TEXT NOT NULL DEFAULT '',
  PRIMARY KEY (test_roll_id, frame)
) STRICT;

-- Own indexes that were accepted, each with the figures of that day; one at a time is in use.
CREATE TABLE own_index (
  id INTEGER PRIMARY KEY,
  film_code TEXT NOT NULL,
  developer TEXT NOT NULL,
  exposed_index REAL NOT NULL CHECK (exposed_index > 0),
  stops REAL NOT NULL,
  stops_sd REAL NOT NULL CHECK (stops_sd >= 0),
  rolls INTEGER NOT NULL CHECK (rolls > 0),
  accepted_at TEXT NOT NULL,
  taken_back_at TEXT
) STRICT;

CREATE UNIQUE INDEX own_index_in_use ON own_index (film_code, developer)
  WHERE taken_back_at IS NULL;

-- By what a strip was read, in the words and of the day it was kept; empty when nobody said.
ALTER TABLE strip ADD COLUMN tablet_name TEXT NOT NULL DEFAULT '';
ALTER TABLE strip ADD COLUMN instrument TEXT NOT NULL DEFAULT '';
ALTER TABLE strip ADD COLUMN calibrated_on TEXT;

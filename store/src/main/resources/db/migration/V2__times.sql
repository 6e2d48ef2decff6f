-- Development times of the user's own: typed from a leaflet or imported. Empty columns: not stated.
-- A withdrawn entry stays for the record and is used no more.

CREATE TABLE own_time (
  id INTEGER PRIMARY KEY,
  film TEXT NOT NULL,
  film_code TEXT NOT NULL,
  developer TEXT NOT NULL,
  dilution TEXT NOT NULL,
  exposure_index REAL,
  temperature_c REAL,
  printed_temperature TEXT NOT NULL,
  time_ms INTEGER NOT NULL CHECK (time_ms > 0),
  longest_ms INTEGER CHECK (longest_ms > time_ms),
  vessel TEXT NOT NULL,
  agitation TEXT NOT NULL,
  agitation_as_typed TEXT NOT NULL,
  contrast TEXT NOT NULL,
  source TEXT NOT NULL,
  added_at TEXT NOT NULL,
  withdrawn_at TEXT
) STRICT;

CREATE INDEX own_time_by_film ON own_time (film_code);

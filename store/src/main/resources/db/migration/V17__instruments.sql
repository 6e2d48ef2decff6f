-- Instruments that read density, step tablets with densities of their own, and calibrations. A calibration keeps the
-- tablet's densities of its day, so that a tablet that is corrected later changes no earlier one.

CREATE TABLE step_tablet (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE COLLATE NOCASE,
  origin TEXT NOT NULL
) STRICT;

CREATE TABLE tablet_step (
  tablet_id INTEGER NOT NULL REFERENCES step_tablet (id),
  position INTEGER NOT NULL,
  label TEXT NOT NULL,
  density REAL NOT NULL,
  PRIMARY KEY (tablet_id, position)
) STRICT;

CREATE TABLE instrument (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE COLLATE NOCASE,
  kind TEXT NOT NULL CHECK (kind IN ('densitometer', 'scanner', 'camera')),
  note TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE TABLE calibration (
  id INTEGER PRIMARY KEY,
  instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  made_on TEXT NOT NULL,
  tablet TEXT NOT NULL,
  method TEXT NOT NULL CHECK (method IN ('formula', 'table', 'as shown')),
  note TEXT NOT NULL DEFAULT ''
) STRICT;

-- Seen is one of: a density shown; the mean of grey; the means of red, green and blue.
CREATE TABLE calibration_step (
  calibration_id INTEGER NOT NULL REFERENCES calibration (id),
  position INTEGER NOT NULL,
  label TEXT NOT NULL,
  density REAL NOT NULL,
  seen_density REAL,
  seen_grey REAL,
  seen_red REAL,
  seen_green REAL,
  seen_blue REAL,
  PRIMARY KEY (calibration_id, position)
) STRICT;

CREATE INDEX calibration_by_instrument ON calibration (instrument_id, made_on, id);

-- What was said of a picture in the folder of pictures, and the patches last drawn on it. It counts only for the very
-- file of that size and date.
CREATE TABLE picture_note (
  name TEXT PRIMARY KEY,
  file_mark TEXT NOT NULL,
  declared_linear INTEGER NOT NULL DEFAULT 0 CHECK (declared_linear IN (0, 1)),
  patches TEXT NOT NULL DEFAULT ''
) STRICT;

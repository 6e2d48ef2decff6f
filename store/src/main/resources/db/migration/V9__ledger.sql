-- Bottles know their life: what stands on them, a ledger of typed lines, the rolls each line was for,
-- and beside the ledger the state it comes to, carried along in the same transaction.

CREATE TABLE new_bottle (
  id INTEGER PRIMARY KEY,
  letter TEXT NOT NULL,
  contents TEXT NOT NULL,
  role TEXT NOT NULL
    CHECK (role IN ('concentrate', 'stock', 'working', 'replenisher', 'waste')),
  bath TEXT NOT NULL,
  dilution TEXT NOT NULL DEFAULT '',
  full_volume_ml REAL NOT NULL CHECK (full_volume_ml > 0),
  after_pouring TEXT NOT NULL CHECK (after_pouring IN ('one-shot', 'reused', 'replenished')),
  storage TEXT NOT NULL DEFAULT 'full, stoppered',
  mixed_on TEXT,
  opened_on TEXT,
  batch TEXT NOT NULL DEFAULT '',
  owner TEXT NOT NULL DEFAULT '',
  note TEXT NOT NULL,
  discarded INTEGER NOT NULL DEFAULT 0 CHECK (discarded IN (0, 1)),
  -- what the ledger comes to; lines says how many of its lines are in it
  left_volume_ml REAL NOT NULL DEFAULT 0,
  basis_volume_ml REAL NOT NULL DEFAULT 0,
  film_rolls REAL NOT NULL DEFAULT 0,
  load_rolls REAL NOT NULL DEFAULT 0,
  replenished_volume_ml REAL NOT NULL DEFAULT 0,
  lines INTEGER NOT NULL DEFAULT 0,
  filled_at TEXT,
  touched_at TEXT,
  leader_line INTEGER,
  proof_line INTEGER,
  clearing_line INTEGER,
  baseline_line INTEGER
) STRICT;

INSERT INTO new_bottle (id, letter, contents, role, bath, full_volume_ml, after_pouring, mixed_on,
    opened_on, note, discarded)
  SELECT id, letter, contents, strength, bath, full_volume_ml,
    CASE one_shot WHEN 1 THEN 'one-shot' ELSE 'reused' END, mixed_on, opened_on, note, discarded
  FROM bottle;

-- Lines are added, never changed. left_volume_ml is what was in the bottle after the line.
CREATE TABLE bottle_line (
  id INTEGER PRIMARY KEY,
  bottle_id INTEGER NOT NULL REFERENCES bottle (id),
  kind TEXT NOT NULL,
  happened_at TEXT NOT NULL,
  run TEXT NOT NULL,
  note TEXT NOT NULL,
  volume_ml REAL,
  out_volume_ml REAL,
  opened_on TEXT,
  clearing_ms INTEGER,
  clip_film TEXT,
  clip_dilution TEXT,
  clip_temperature_c REAL,
  baseline INTEGER,
  rolls TEXT,
  left_volume_ml REAL NOT NULL
) STRICT;

-- The old book kept changes; a correction becomes what was found to be left.
INSERT INTO bottle_line (id, bottle_id, kind, happened_at, run, note, volume_ml, out_volume_ml,
    opened_on, left_volume_ml)
  SELECT e.id, e.bottle_id,
    CASE
      WHEN e.kind = 'taken out' AND (e.run <> '' OR e.film_rolls > 0) THEN 'used'
      ELSE e.kind
    END,
    e.entered_at, e.run, e.note,
    CASE
      WHEN e.kind = 'corrected' THEN max(0, sum(e.change_volume_ml) OVER so_far)
      WHEN e.kind IN ('filled', 'taken out', 'poured back', 'topped up') THEN abs(e.change_volume_ml)
    END,
    CASE e.kind WHEN 'topped up' THEN 0.0 END,
    CASE e.kind WHEN 'opened' THEN coalesce(b.opened_on, substr(e.entered_at, 1, 10)) END,
    max(0, sum(e.change_volume_ml) OVER so_far)
  FROM bottle_entry e JOIN bottle b ON b.id = e.bottle_id
  WINDOW so_far AS (PARTITION BY e.bottle_id ORDER BY e.id);

-- The rolls a line was for, and whether a test vouches for their fixing.
CREATE TABLE bottle_roll (
  id INTEGER PRIMARY KEY,
  bottle_id INTEGER NOT NULL REFERENCES bottle (id),
  line_id INTEGER NOT NULL REFERENCES bottle_line (id),
  undoes INTEGER NOT NULL CHECK (undoes IN (0, 1)),
  roll TEXT NOT NULL,
  film TEXT NOT NULL,
  film_rolls REAL NOT NULL,
  tabular INTEGER NOT NULL CHECK (tabular IN (0, 1)),
  mark TEXT NOT NULL
) STRICT;

-- An old line names no rolls: they are those of its run where the amounts agree, else unnamed.
CREATE TEMP TABLE named AS
  SELECT e.id FROM bottle_entry e JOIN run_roll r ON r.run_id = CAST(e.run AS INTEGER)
  WHERE e.run <> '' AND e.film_rolls > 0
  GROUP BY e.id HAVING abs(sum(r.film_rolls) - max(e.film_rolls)) < 1e-9;

INSERT INTO bottle_roll (bottle_id, line_id, undoes, roll, film, film_rolls, tabular, mark)
  SELECT e.bottle_id, e.id, 0, r.number, r.film, r.film_rolls,
    coalesce(x.film_code IN ('100TMX', 'TMX', 'TMY-2', 'TMY', 'P3200TMZ', 'TMZ'), 0),
    'not yet vouched for'
  FROM bottle_entry e JOIN named n ON n.id = e.id
    JOIN run_roll r ON r.run_id = CAST(e.run AS INTEGER)
    LEFT JOIN roll x ON x.number = r.number
  ORDER BY e.id, r.position;

INSERT INTO bottle_roll (bottle_id, line_id, undoes, roll, film, film_rolls, tabular, mark)
  SELECT bottle_id, id, 0, '', '', film_rolls, 0, 'not yet vouched for'
  FROM bottle_entry WHERE film_rolls > 0 AND id NOT IN (SELECT id FROM named);

DROP TABLE named;
DROP TABLE bottle_entry;
DROP TABLE bottle;
ALTER TABLE new_bottle RENAME TO bottle;

-- A letter is free again when its bottle has left the shelf.
CREATE UNIQUE INDEX bottle_on_shelf ON bottle (letter) WHERE discarded = 0;
CREATE INDEX bottle_line_by_bottle ON bottle_line (bottle_id, id);
CREATE INDEX bottle_line_by_run ON bottle_line (run);
CREATE INDEX bottle_roll_by_line ON bottle_roll (line_id);
CREATE INDEX bottle_roll_by_mark ON bottle_roll (bottle_id, mark);
CREATE INDEX bottle_roll_recalled ON bottle_roll (mark, id) WHERE mark = 'to be fixed again';

-- Two fixers used one after the other.
CREATE TABLE fixer_pair (
  id INTEGER PRIMARY KEY,
  first_bottle INTEGER NOT NULL REFERENCES bottle (id),
  second_bottle INTEGER NOT NULL REFERENCES bottle (id),
  rotations INTEGER NOT NULL DEFAULT 0,
  over INTEGER NOT NULL DEFAULT 0 CHECK (over IN (0, 1))
) STRICT;

ALTER TABLE roll ADD COLUMN owner TEXT NOT NULL DEFAULT '';

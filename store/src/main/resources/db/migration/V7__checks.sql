-- Checks before the first pour: what is looked at when a tank is closed, what was passed over and why.

-- A tank without rows is closed by the usual list.
CREATE TABLE tank_check (
  tank_id INTEGER NOT NULL REFERENCES tank (id),
  position INTEGER NOT NULL,
  check_id TEXT NOT NULL,
  text TEXT NOT NULL,
  always INTEGER NOT NULL CHECK (always IN (0, 1)),
  PRIMARY KEY (tank_id, position)
) STRICT;

-- The tank in words when the run was opened, so that a changed tank is known for another one.
ALTER TABLE run ADD COLUMN tank_described TEXT;

ALTER TABLE run_event ADD COLUMN passed_over TEXT;
ALTER TABLE run_event ADD COLUMN reason TEXT;

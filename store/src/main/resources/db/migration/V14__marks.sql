-- Which marks of mishaps nobody has answered yet, so that a bottle is read without its whole ledger.
-- Filled from the ledgers when an older database is opened.
CREATE TABLE bottle_mark (
  line_id INTEGER PRIMARY KEY REFERENCES bottle_line (id),
  bottle_id INTEGER NOT NULL REFERENCES bottle (id)
) STRICT;

CREATE INDEX bottle_mark_by_bottle ON bottle_mark (bottle_id, line_id);

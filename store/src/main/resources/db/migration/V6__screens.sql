-- Screens that were let in over the network. Of the secret a screen shows only the hash is kept.

CREATE TABLE screen (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  key_hash TEXT NOT NULL UNIQUE,
  paired_at TEXT NOT NULL,
  seen_at TEXT NOT NULL,
  removed_at TEXT
) STRICT;

-- The waters of the house, in the order in which they are preferred for mixing.

CREATE TABLE water (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE COLLATE NOCASE,
  temperature_c REAL NOT NULL,
  hardness TEXT NOT NULL
) STRICT;

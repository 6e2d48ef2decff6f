-- What the development dose of a run is reckoned from, as it was known when the run was opened.
ALTER TABLE run ADD COLUMN rate_beta_per_k REAL;
ALTER TABLE run ADD COLUMN rate_reference_c REAL;
ALTER TABLE run ADD COLUMN rate_low_c REAL;
ALTER TABLE run ADD COLUMN rate_high_c REAL;
ALTER TABLE run ADD COLUMN rate_standing TEXT;
ALTER TABLE run ADD COLUMN rate_source TEXT;
ALTER TABLE run ADD COLUMN room_c REAL;
ALTER TABLE run ADD COLUMN tank_j_per_k REAL;

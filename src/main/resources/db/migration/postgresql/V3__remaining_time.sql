-- Told by the process that is at the job, for those that are asked about it.
ALTER TABLE job ADD COLUMN remaining_s DOUBLE PRECISION;

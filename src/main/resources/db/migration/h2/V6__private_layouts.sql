-- What belongs to a private layout names it, and goes with it; ids within it have its own at their end.
ALTER TABLE stored_result ADD COLUMN realm VARCHAR(60);
CREATE INDEX stored_result_by_realm ON stored_result (realm);
ALTER TABLE stored_result ALTER COLUMN id SET DATA TYPE VARCHAR(120);
ALTER TABLE job ALTER COLUMN job_id SET DATA TYPE VARCHAR(120);
ALTER TABLE job_ask ALTER COLUMN job_id SET DATA TYPE VARCHAR(120);

-- What a result cost, what it weighs and when it was last used decide which ones go when the store is full.
ALTER TABLE stored_result ADD COLUMN cost_s DOUBLE PRECISION DEFAULT 0 NOT NULL;
ALTER TABLE stored_result ADD COLUMN weight_bytes BIGINT DEFAULT 0 NOT NULL;
ALTER TABLE stored_result ADD COLUMN last_used_at TIMESTAMP(3) WITH TIME ZONE;
UPDATE stored_result SET weight_bytes = OCTET_LENGTH(body) + CHAR_LENGTH(request) + 256, last_used_at = created_at;
ALTER TABLE stored_result ALTER COLUMN last_used_at SET NOT NULL;

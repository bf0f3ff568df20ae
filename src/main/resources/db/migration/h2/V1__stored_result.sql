CREATE TABLE stored_result (
  id VARCHAR(80) PRIMARY KEY,
  kind VARCHAR(40) NOT NULL,
  request CLOB NOT NULL,
  body BLOB NOT NULL,
  digest CHAR(64) NOT NULL,
  engine_revision INTEGER NOT NULL,
  created_at TIMESTAMP(3) WITH TIME ZONE NOT NULL
);

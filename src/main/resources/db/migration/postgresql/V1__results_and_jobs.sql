CREATE TABLE stored_result (
  id VARCHAR(80) PRIMARY KEY,
  kind VARCHAR(40) NOT NULL,
  request TEXT NOT NULL,
  body BYTEA NOT NULL,
  digest CHAR(64) NOT NULL,
  engine_revision INTEGER NOT NULL,
  created_at TIMESTAMP(3) WITH TIME ZONE NOT NULL,
  cost_s DOUBLE PRECISION DEFAULT 0 NOT NULL,
  weight_bytes BIGINT DEFAULT 0 NOT NULL,
  last_used_at TIMESTAMP(3) WITH TIME ZONE NOT NULL
);
-- Bodies are compressed already, or not worth it.
ALTER TABLE stored_result ALTER COLUMN body SET STORAGE EXTERNAL;
CREATE TABLE job (
  job_id VARCHAR(60) PRIMARY KEY,
  kind VARCHAR(40) NOT NULL,
  result_url VARCHAR(2000) NOT NULL,
  recipe VARCHAR(2000) NOT NULL,
  state VARCHAR(12) NOT NULL,
  progress DOUBLE PRECISION NOT NULL,
  submitted_at TIMESTAMP(3) WITH TIME ZONE NOT NULL,
  started_at TIMESTAMP(3) WITH TIME ZONE,
  finished_at TIMESTAMP(3) WITH TIME ZONE,
  problem TEXT
);
CREATE TABLE job_ask (
  ask VARCHAR(40) PRIMARY KEY,
  job_id VARCHAR(60) NOT NULL
);
CREATE INDEX job_ask_by_job ON job_ask (job_id);
CREATE TABLE computation_claim (
  result_id VARCHAR(80) PRIMARY KEY,
  owner VARCHAR(100) NOT NULL,
  until_at TIMESTAMP WITH TIME ZONE NOT NULL
);
CREATE INDEX computation_claim_by_owner ON computation_claim (owner);
-- The task queue's own table, as its manual gives the columns.
CREATE TABLE scheduled_tasks (
  task_name VARCHAR(100) NOT NULL,
  task_instance VARCHAR(100) NOT NULL,
  task_data BYTEA,
  execution_time TIMESTAMP WITH TIME ZONE NOT NULL,
  picked BOOLEAN NOT NULL,
  picked_by VARCHAR(100),
  last_success TIMESTAMP WITH TIME ZONE,
  last_failure TIMESTAMP WITH TIME ZONE,
  consecutive_failures INT,
  last_heartbeat TIMESTAMP WITH TIME ZONE,
  version BIGINT NOT NULL,
  priority SMALLINT,
  PRIMARY KEY (task_name, task_instance)
);
CREATE INDEX scheduled_tasks_by_time ON scheduled_tasks (execution_time);
CREATE INDEX scheduled_tasks_by_heartbeat ON scheduled_tasks (last_heartbeat);

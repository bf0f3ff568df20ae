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
  problem CLOB
);
CREATE TABLE job_ask (
  ask VARCHAR(40) PRIMARY KEY,
  job_id VARCHAR(60) NOT NULL
);
CREATE INDEX job_ask_by_job ON job_ask (job_id);
-- The task queue's own table, as its manual gives the columns.
CREATE TABLE scheduled_tasks (
  task_name VARCHAR(100) NOT NULL,
  task_instance VARCHAR(100) NOT NULL,
  task_data BLOB,
  execution_time TIMESTAMP(6) WITH TIME ZONE NOT NULL,
  picked BOOLEAN NOT NULL,
  picked_by VARCHAR(100),
  last_success TIMESTAMP(6) WITH TIME ZONE,
  last_failure TIMESTAMP(6) WITH TIME ZONE,
  consecutive_failures INT,
  last_heartbeat TIMESTAMP(6) WITH TIME ZONE,
  version BIGINT NOT NULL,
  priority SMALLINT,
  PRIMARY KEY (task_name, task_instance)
);
CREATE INDEX scheduled_tasks_by_time ON scheduled_tasks (execution_time);

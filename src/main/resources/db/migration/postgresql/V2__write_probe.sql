-- One row that is written now and then, to know whether anything can be written.
CREATE TABLE write_probe (
    id INT PRIMARY KEY,
    written_at TIMESTAMP WITH TIME ZONE NOT NULL
);
INSERT INTO write_probe VALUES (1, CURRENT_TIMESTAMP);

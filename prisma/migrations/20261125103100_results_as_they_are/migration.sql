-- The result of an assessment is some hundred kilobytes and is written while a person waits. Compressing it took longer than
-- all else about publishing; on disk it may be large.
ALTER TABLE assessment ALTER COLUMN result SET STORAGE EXTERNAL;

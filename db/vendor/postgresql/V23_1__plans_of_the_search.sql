-- Entries are always found through the index of their words: most words are rare, and to read a common one's entries
-- through it is still several times quicker than to look into each. Without statistics the planner does so; another type,
-- even the same, forgets those that there are.
alter table search_entry alter column words type tsvector;
alter table search_entry alter column words set statistics 0;

-- A figure is never taken for a slip of another one.
drop index search_vocabulary_near;
create index search_vocabulary_near on search_vocabulary using gist (word gist_trgm_ops) where word !~ '[0-9]';

-- pg_trgm is a trusted extension: whoever may create things in this database may create it, without being a superuser.
-- Where even that is not allowed, its owner runs this line once beforehand, and then it does nothing here.
create extension if not exists pg_trgm;

-- Stems come from the service, so that both databases find the same; a stem stands behind "=", a word as it is written.
alter table search_entry add column words tsvector not null default '';
create index search_entry_words on search_entry using gin (words);

create table search_vocabulary (
    word varchar(40) collate "C" not null,
    stem varchar(40) collate "C" not null,
    constraint search_vocabulary_key primary key (word)
);
create index search_vocabulary_stem on search_vocabulary (stem);
create index search_vocabulary_near on search_vocabulary using gist (word gist_trgm_ops);

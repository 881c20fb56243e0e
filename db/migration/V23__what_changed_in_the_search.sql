-- Each instance keeps in memory which entries have which facet values and words, and reads only what has changed since it
-- last looked: the count of search_index at which an entry was written or removed.
alter table search_entry add column change_number bigint not null default 0;
create index search_entry_changed on search_entry (change_number);

create table search_removed (
    entry_id bigint not null,
    change_number bigint not null,
    constraint search_removed_key primary key (entry_id)
);
create index search_removed_changed on search_removed (change_number);

-- Orders and sets are counted in memory now.
drop index search_entry_newest;
drop index search_entry_effect;
drop index search_entry_alike;

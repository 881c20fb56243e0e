-- Words are weighed for some entries at a time.
create index search_word_by_entry on search_word (entry_id, word);
drop index search_word_of_entry;

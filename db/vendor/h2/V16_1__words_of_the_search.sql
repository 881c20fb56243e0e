-- H2 has no index of words that lives and dies with the transaction: these tables are one.
-- A word stands as it is written, for beginnings, and as its stem behind "=".
create table search_word (
    word varchar(41) not null,
    entry_id bigint not null,
    weight integer not null,
    constraint search_word_key primary key (word, entry_id),
    constraint search_word_entry foreign key (entry_id) references search_entry (id) on delete cascade
);
create index search_word_of_entry on search_word (entry_id);

create table search_vocabulary (
    word varchar(40) not null,
    stem varchar(40) not null,
    constraint search_vocabulary_key primary key (word)
);
create index search_vocabulary_stem on search_vocabulary (stem);

-- Every three letters in a row, with two blanks before the word and one behind it.
create table search_trigram (
    trigram varchar(3) not null,
    word varchar(40) not null,
    constraint search_trigram_key primary key (trigram, word),
    constraint search_trigram_word foreign key (word) references search_vocabulary (word) on delete cascade
);
create index search_trigram_of_word on search_trigram (word);

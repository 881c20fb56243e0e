-- Photographs as they are served: JPEG made here, named by the SHA-256 of the large one. The bounds keep each within
-- what H2 holds in a row.
create table photograph (
    sha256 char(64) primary key,
    large bytea not null,
    small bytea not null,
    is_public boolean default false not null,
    created_at timestamp with time zone not null
);

-- Who put it here; the same picture may come from several people.
create table photograph_owner (
    sha256 char(64) not null references photograph (sha256),
    person_id varchar(36) not null,
    added_at timestamp with time zone not null,
    constraint photograph_owner_key primary key (sha256, person_id)
);
create index photograph_owner_person on photograph_owner (person_id);

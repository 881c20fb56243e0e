-- Who looks at what was submitted, what they said about it, and what the automatic checks found.
create table review_claim (
    kind varchar(20) not null,
    slug varchar(80) not null,
    revision integer not null,
    person_id varchar(36) not null,
    person varchar(120) not null,
    claimed_at timestamp with time zone not null,
    constraint review_claim_key primary key (kind, slug, revision)
);

-- Remarks are only ever added.
create table review_remark (
    id bigint generated always as identity primary key,
    kind varchar(20) not null,
    slug varchar(80) not null,
    revision integer not null,
    field varchar(300) not null,
    words varchar(2000) not null,
    person_id varchar(36) not null,
    person varchar(120) not null,
    written_at timestamp with time zone not null
);
create index review_remark_revision on review_remark (kind, slug, revision, id);

create table submission_check (
    kind varchar(20) not null,
    slug varchar(80) not null,
    revision integer not null,
    place integer not null,
    name varchar(120) not null,
    outcome varchar(16) not null,
    detail varchar(2000) not null,
    checked_at timestamp with time zone not null,
    constraint submission_check_key primary key (kind, slug, revision, place),
    constraint submission_check_outcome check (outcome in ('PASSED', 'NOTICED', 'FAILED'))
);

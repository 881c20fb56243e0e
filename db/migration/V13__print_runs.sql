-- Print runs, shaped like the other records. V9 says why the check of the state has no list.
create table print_run_revision (
    slug varchar(80) not null,
    revision integer not null,
    state varchar(16) not null,
    name varchar(200) not null,
    content text not null,
    sha256 char(64) not null,
    contributor varchar(120) not null,
    created_at timestamp with time zone not null,
    derived_from_slug varchar(80),
    derived_from_revision integer,
    contributor_id varchar(36),
    licence varchar(16),
    summary varchar(2000),
    draft_id varchar(36),
    published_at timestamp with time zone,
    published_by varchar(120),
    closed_at timestamp with time zone,
    closed_by varchar(120),
    reason varchar(2000),
    constraint print_run_revision_key primary key (slug, revision),
    constraint print_run_revision_counts check (revision >= 1),
    constraint print_run_revision_state
        check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0),
    constraint print_run_revision_origin check ((derived_from_slug is null) = (derived_from_revision is null))
);
create index print_run_revision_listing on print_run_revision (state, created_at desc, slug);
create index print_run_revision_published on print_run_revision (state, published_at desc, slug);
create index print_run_revision_children on print_run_revision (derived_from_slug, derived_from_revision);

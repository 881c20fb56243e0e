-- Installations, shaped like the other records. V9 says why the check of the state has no list.
create table installation_revision (
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
    constraint installation_revision_key primary key (slug, revision),
    constraint installation_revision_counts check (revision >= 1),
    constraint installation_revision_state
        check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0),
    constraint installation_revision_origin check ((derived_from_slug is null) = (derived_from_revision is null))
);
create index installation_revision_listing on installation_revision (state, created_at desc, slug);
create index installation_revision_published on installation_revision (state, published_at desc, slug);
create index installation_revision_children on installation_revision (derived_from_slug, derived_from_revision);
-- Inspections, shaped like the other records. V9 says why the check of the state has no list.
create table inspection_revision (
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
    constraint inspection_revision_key primary key (slug, revision),
    constraint inspection_revision_counts check (revision >= 1),
    constraint inspection_revision_state
        check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0),
    constraint inspection_revision_origin check ((derived_from_slug is null) = (derived_from_revision is null))
);
create index inspection_revision_listing on inspection_revision (state, created_at desc, slug);
create index inspection_revision_published on inspection_revision (state, published_at desc, slug);
create index inspection_revision_children on inspection_revision (derived_from_slug, derived_from_revision);

-- Which installation an inspection looked at, so that nobody looks for it in the text of every inspection.
create table inspection_installation (
    slug varchar(80) not null,
    revision integer not null,
    installation_slug varchar(80) not null,
    constraint inspection_installation_key primary key (slug, revision),
    constraint inspection_installation_revision foreign key (slug, revision)
        references inspection_revision (slug, revision) on delete cascade
);
create index inspection_installation_installation on inspection_installation (installation_slug);

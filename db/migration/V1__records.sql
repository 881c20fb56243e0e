-- Records as immutable revisions. Content is canonical JSON (RFC 8785) and its SHA-256 stands beside it.
-- The same statements run on H2 (PostgreSQL mode) and on PostgreSQL.

create table airframe_revision (
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
    constraint airframe_revision_key primary key (slug, revision),
    constraint airframe_revision_counts check (revision >= 1),
    constraint airframe_revision_state
        check (state in ('DRAFT', 'SUBMITTED', 'RETURNED', 'PUBLISHED', 'SUPERSEDED', 'WITHDRAWN')),
    constraint airframe_revision_origin check ((derived_from_slug is null) = (derived_from_revision is null))
);
create index airframe_revision_listing on airframe_revision (state, created_at desc, slug);

create table device_revision (
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
    constraint device_revision_key primary key (slug, revision),
    constraint device_revision_counts check (revision >= 1),
    constraint device_revision_state
        check (state in ('DRAFT', 'SUBMITTED', 'RETURNED', 'PUBLISHED', 'SUPERSEDED', 'WITHDRAWN')),
    constraint device_revision_origin check ((derived_from_slug is null) = (derived_from_revision is null))
);
create index device_revision_listing on device_revision (state, created_at desc, slug);

create table layout_revision (
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
    constraint layout_revision_key primary key (slug, revision),
    constraint layout_revision_counts check (revision >= 1),
    constraint layout_revision_state
        check (state in ('DRAFT', 'SUBMITTED', 'RETURNED', 'PUBLISHED', 'SUPERSEDED', 'WITHDRAWN')),
    constraint layout_revision_origin check ((derived_from_slug is null) = (derived_from_revision is null))
);
create index layout_revision_listing on layout_revision (state, created_at desc, slug);

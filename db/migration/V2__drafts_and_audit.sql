-- What people did. Entries are only ever added.
create table audit_entry (
    id bigint generated always as identity primary key,
    at timestamp with time zone not null,
    person_id varchar(36),
    person varchar(120) not null,
    event varchar(60) not null,
    subject varchar(300) not null,
    detail varchar(2000) not null,
    address varchar(60) not null
);

-- Work that is not published yet. Content is kept by version, so that nobody's saving loses anybody's text.
create table draft (
    id varchar(36) primary key,
    kind varchar(20) not null,
    name varchar(200) not null,
    state varchar(16) not null,
    version integer not null,
    author_id varchar(36) not null,
    author varchar(120) not null,
    created_at timestamp with time zone not null,
    changed_at timestamp with time zone not null,
    base_slug varchar(80),
    base_revision integer,
    origin_slug varchar(80),
    origin_revision integer,
    slug varchar(80),
    revision integer,
    constraint draft_state check (state in ('DRAFT', 'SUBMITTED', 'RETURNED', 'PUBLISHED', 'DISCARDED')),
    constraint draft_base check ((base_slug is null) = (base_revision is null)),
    constraint draft_origin check ((origin_slug is null) = (origin_revision is null)),
    constraint draft_submission check (revision is null or slug is not null)
);
create index draft_author on draft (author_id, changed_at desc);
create index draft_record on draft (kind, slug, revision);

create table draft_version (
    draft_id varchar(36) not null references draft (id),
    version integer not null,
    content text not null,
    person_id varchar(36) not null,
    person varchar(120) not null,
    saved_at timestamp with time zone not null,
    constraint draft_version_key primary key (draft_id, version)
);

create table draft_coauthor (
    draft_id varchar(36) not null references draft (id),
    person_id varchar(36) not null,
    person varchar(120) not null,
    constraint draft_coauthor_key primary key (draft_id, person_id)
);
create index draft_coauthor_person on draft_coauthor (person_id);

-- Who answers for a revision, under which licence it may be used, and how it came to be public or not.
alter table airframe_revision add column contributor_id varchar(36);
alter table airframe_revision add column licence varchar(16);
alter table airframe_revision add column summary varchar(2000);
alter table airframe_revision add column draft_id varchar(36);
alter table airframe_revision add column published_at timestamp with time zone;
alter table airframe_revision add column published_by varchar(120);
alter table airframe_revision add column closed_at timestamp with time zone;
alter table airframe_revision add column closed_by varchar(120);
alter table airframe_revision add column reason varchar(2000);
update airframe_revision set published_at = created_at where state in ('PUBLISHED', 'SUPERSEDED', 'WITHDRAWN');
create index airframe_revision_published on airframe_revision (state, published_at desc, slug);
create index airframe_revision_children on airframe_revision (derived_from_slug, derived_from_revision);

alter table device_revision add column contributor_id varchar(36);
alter table device_revision add column licence varchar(16);
alter table device_revision add column summary varchar(2000);
alter table device_revision add column draft_id varchar(36);
alter table device_revision add column published_at timestamp with time zone;
alter table device_revision add column published_by varchar(120);
alter table device_revision add column closed_at timestamp with time zone;
alter table device_revision add column closed_by varchar(120);
alter table device_revision add column reason varchar(2000);
update device_revision set published_at = created_at where state in ('PUBLISHED', 'SUPERSEDED', 'WITHDRAWN');
create index device_revision_published on device_revision (state, published_at desc, slug);
create index device_revision_children on device_revision (derived_from_slug, derived_from_revision);

alter table layout_revision add column contributor_id varchar(36);
alter table layout_revision add column licence varchar(16);
alter table layout_revision add column summary varchar(2000);
alter table layout_revision add column draft_id varchar(36);
alter table layout_revision add column published_at timestamp with time zone;
alter table layout_revision add column published_by varchar(120);
alter table layout_revision add column closed_at timestamp with time zone;
alter table layout_revision add column closed_by varchar(120);
alter table layout_revision add column reason varchar(2000);
update layout_revision set published_at = created_at where state in ('PUBLISHED', 'SUPERSEDED', 'WITHDRAWN');
create index layout_revision_published on layout_revision (state, published_at desc, slug);
create index layout_revision_children on layout_revision (derived_from_slug, derived_from_revision);

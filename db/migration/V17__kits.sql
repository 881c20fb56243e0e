-- What is imported from another instance keeps its text and hash; beside it stand where it came from and, where the
-- records it names have other slugs here, the same text with their names here.

alter table adhesive_revision add column import_origin text;
alter table adhesive_revision add column localised text;
alter table adhesive_revision drop constraint adhesive_revision_state;
alter table adhesive_revision add constraint adhesive_revision_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|IMPORTED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0);
create index adhesive_revision_hash on adhesive_revision (sha256);

alter table airframe_revision add column import_origin text;
alter table airframe_revision add column localised text;
alter table airframe_revision drop constraint airframe_revision_state;
alter table airframe_revision add constraint airframe_revision_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|IMPORTED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0);
create index airframe_revision_hash on airframe_revision (sha256);

alter table campaign_revision add column import_origin text;
alter table campaign_revision add column localised text;
alter table campaign_revision drop constraint campaign_revision_state;
alter table campaign_revision add constraint campaign_revision_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|IMPORTED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0);
create index campaign_revision_hash on campaign_revision (sha256);

alter table device_revision add column import_origin text;
alter table device_revision add column localised text;
alter table device_revision drop constraint device_revision_state;
alter table device_revision add constraint device_revision_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|IMPORTED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0);
create index device_revision_hash on device_revision (sha256);

alter table inspection_revision add column import_origin text;
alter table inspection_revision add column localised text;
alter table inspection_revision drop constraint inspection_revision_state;
alter table inspection_revision add constraint inspection_revision_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|IMPORTED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0);
create index inspection_revision_hash on inspection_revision (sha256);

alter table installation_revision add column import_origin text;
alter table installation_revision add column localised text;
alter table installation_revision drop constraint installation_revision_state;
alter table installation_revision add constraint installation_revision_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|IMPORTED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0);
create index installation_revision_hash on installation_revision (sha256);

alter table layout_revision add column import_origin text;
alter table layout_revision add column localised text;
alter table layout_revision drop constraint layout_revision_state;
alter table layout_revision add constraint layout_revision_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|IMPORTED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0);
create index layout_revision_hash on layout_revision (sha256);

alter table print_run_revision add column import_origin text;
alter table print_run_revision add column localised text;
alter table print_run_revision drop constraint print_run_revision_state;
alter table print_run_revision add constraint print_run_revision_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|IMPORTED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0);
create index print_run_revision_hash on print_run_revision (sha256);

-- A kit that somebody has sent and not yet decided on, or has kept. Its picture is made anew each time it is looked at.
create table kit_import (
    id varchar(36) primary key,
    person_id varchar(36) not null,
    person varchar(120) not null,
    sha256 char(64) not null,
    sent_at timestamp with time zone not null,
    kept_at timestamp with time zone,
    contents text not null,
    outcome text
);
create index kit_import_person on kit_import (person_id, sent_at);
create index kit_import_sent on kit_import (sent_at);

-- Photographs of a kit until it is kept; each fits into a row of H2.
create table kit_photograph (
    import_id varchar(36) not null,
    sha256 char(64) not null,
    jpeg bytea not null,
    constraint kit_photograph_key primary key (import_id, sha256),
    constraint kit_photograph_import foreign key (import_id) references kit_import (id) on delete cascade
);

-- What the origin said of how an imported revision came to be (W3C PROV-JSON), as it was sent.
create table kit_provenance (
    plural varchar(20) not null,
    slug varchar(80) not null,
    revision integer not null,
    prov text not null,
    constraint kit_provenance_key primary key (plural, slug, revision)
);
